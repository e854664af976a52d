package dev.faircarry.oracle;

import dev.faircarry.split.CampHandover;
import dev.faircarry.split.Carry;
import dev.faircarry.split.Opened;
import dev.faircarry.split.Split;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.Trip;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Random splits of small trips: sound ones, which may break any rule, and damaged ones. */
public final class RandomSplits {
  private static final int MOST_COURSES = 200_000;
  private static final int[] ODD = {
    0, -1, 1, 2, 99, Integer.MAX_VALUE, Integer.MAX_VALUE / 4, Integer.MIN_VALUE
  };

  private RandomSplits() {}

  /**
   * Everything is carried once, opened as it is used, and handed on where needed. Now and then most
   * of it is with one hiker, so that rules about holding things together have a chance.
   */
  public static Split sound(Trip trip, SplittableRandom random) {
    PlainTrip plain = new PlainTrip(trip);
    boolean lumped = random.nextInt(3) == 0;
    int favourite = random.nextInt(trip.hikers().size());
    List<Carry> carries = new ArrayList<>();
    List<Opened> opened = new ArrayList<>();
    List<CampHandover> handed = new ArrayList<>();
    for (Thing thing : plain.things) {
      List<Course> courses = Courses.of(plain, thing, MOST_COURSES);
      List<Course> liked =
          courses.stream()
              .filter(c -> lumped && c.carries().size() == 1)
              .filter(c -> c.carries().get(0).hiker().equals(plain.hiker(favourite).id()))
              .toList();
      List<Course> from = liked.isEmpty() || random.nextInt(5) == 0 ? courses : liked;
      Course course = from.get(random.nextInt(from.size()));
      carries.addAll(course.carries());
      opened.addAll(course.opened());
      handed.addAll(course.handovers());
    }
    return new Split(carries, opened, handed);
  }

  /** The split with one entry too many, too few, or changed. */
  public static Split damaged(Trip trip, Split split, SplittableRandom random) {
    List<Carry> carries = new ArrayList<>(split.carries());
    List<Opened> opened = new ArrayList<>(split.opened());
    List<CampHandover> handed = new ArrayList<>(split.handoversAtCamp());
    String one = hiker(trip, random);
    PieceRef piece =
        carries.isEmpty() || random.nextInt(8) == 0
            ? PieceRef.of("nothing")
            : carries.get(random.nextInt(carries.size())).piece();
    int units = ODD[random.nextInt(ODD.length)];
    int day =
        random.nextInt(5) == 0 ? ODD[random.nextInt(ODD.length)] : 1 + random.nextInt(trip.days());
    switch (random.nextInt(7)) {
      case 0 -> carries.add(new Carry(one, piece, units));
      case 1 -> dropOne(carries, random);
      case 2 -> {
        if (!carries.isEmpty()) {
          Carry old = carries.remove(random.nextInt(carries.size()));
          carries.add(new Carry(old.hiker(), old.piece(), units));
        }
      }
      case 3 -> opened.add(new Opened(day, piece.item(), one, units));
      case 4 -> dropOne(opened, random);
      case 5 -> handed.add(new CampHandover(day, one, hiker(trip, random), piece, units));
      default -> dropOne(handed, random);
    }
    return new Split(carries, opened, handed);
  }

  private static <T> void dropOne(List<T> list, SplittableRandom random) {
    if (!list.isEmpty()) {
      list.remove(random.nextInt(list.size()));
    }
  }

  private static String hiker(Trip trip, SplittableRandom random) {
    return random.nextInt(8) == 0
        ? "nobody"
        : trip.hikers().get(random.nextInt(trip.hikers().size())).id();
  }
}
