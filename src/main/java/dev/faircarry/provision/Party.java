package dev.faircarry.provision;

import dev.faircarry.trip.Trip;

/** How many people there are on each day. */
final class Party {
  private final int[] people;

  private Party(int[] people) {
    this.people = people;
  }

  static Party of(Trip trip) {
    int[] people = new int[trip.days() + 1];
    for (int day = 1; day <= trip.days(); day++) {
      int today = day;
      people[day] =
          (int) trip.hikers().stream().filter(h -> today <= h.lastDay(trip.days())).count();
    }
    return new Party(people);
  }

  int days() {
    return people.length - 1;
  }

  int on(int day) {
    return people[day];
  }

  long personDays() {
    long sum = 0;
    for (int day = 1; day < people.length; day++) {
      sum += people[day];
    }
    return sum;
  }
}
