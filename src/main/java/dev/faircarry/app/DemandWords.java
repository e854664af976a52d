package dev.faircarry.app;

import dev.faircarry.split.Demand;
import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.Rule;
import dev.faircarry.trip.Trip;
import java.util.List;
import java.util.stream.Collectors;

/** Says in words, with the names of the trip, what every split must keep. */
public final class DemandWords {
  private final TripNames names;
  private final Trip trip;

  public DemandWords(Trip trip) {
    this.trip = trip;
    this.names = new TripNames(trip);
  }

  /** The sentences of a conflict. */
  public static List<String> of(SplitResult.Impossible impossible) {
    DemandWords words = new DemandWords(impossible.trip());
    return impossible.conflict().stream().map(words::words).toList();
  }

  /** Kind of a demand: that of a rule, or {@code minor}, {@code room}, ... */
  public String kind(Demand demand) {
    if (demand instanceof Demand.OfRule rule) {
      return rule(rule.ruleId()).match(KIND);
    }
    if (demand instanceof Demand.OfMinor) {
      return "minor";
    }
    if (demand instanceof Demand.OfRoom) {
      return "room";
    }
    if (demand instanceof Demand.OfMaxPieces) {
      return "max-pieces";
    }
    if (demand instanceof Demand.OfFrozen) {
      return "frozen";
    }
    return "containers";
  }

  /** Id of the rule, the hiker or the kind of container a demand is about. */
  public String id(Demand demand) {
    if (demand instanceof Demand.OfRule rule) {
      return rule.ruleId();
    }
    if (demand instanceof Demand.OfMinor minor) {
      return minor.hiker();
    }
    if (demand instanceof Demand.OfRoom room) {
      return room.hiker();
    }
    if (demand instanceof Demand.OfMaxPieces most) {
      return most.hiker();
    }
    if (demand instanceof Demand.OfFrozen frozen) {
      return frozen.piece().text();
    }
    return ((Demand.OfContainers) demand).kind();
  }

  /** The demand in one sentence. */
  public String words(Demand demand) {
    if (demand instanceof Demand.OfRule rule) {
      return rule(rule.ruleId()).match(new Words());
    }
    if (demand instanceof Demand.OfMinor minor) {
      return names.hiker(minor.hiker()) + " is a minor and carries nothing for flame or fuel.";
    }
    if (demand instanceof Demand.OfRoom room) {
      return "What " + names.hiker(room.hiker()) + " carries must fit into the pack.";
    }
    if (demand instanceof Demand.OfMaxPieces most) {
      return names.hiker(most.hiker()) + " takes at most " + most(most.hiker()) + " pieces.";
    }
    if (demand instanceof Demand.OfFrozen frozen) {
      return "“" + names.piece(frozen.piece()) + "” is packed and stays where it is.";
    }
    String kind = ((Demand.OfContainers) demand).kind();
    return "What goes into a container for " + kind + " must travel in one.";
  }

  private String most(String id) {
    return trip.hikers().stream()
        .filter(h -> h.id().equals(id))
        .map(Hiker::maxPieces)
        .filter(java.util.OptionalInt::isPresent)
        .map(most -> String.valueOf(most.getAsInt()))
        .findFirst()
        .orElse("so many");
  }

  private Rule rule(String id) {
    return trip.rules().stream()
        .filter(r -> r.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no rule " + id));
  }

  private String pieces(List<PieceRef> pieces) {
    return pieces.stream().map(names::piece).collect(Collectors.joining(", "));
  }

  private String hikers(List<String> hikers) {
    return hikers.stream().map(names::hiker).collect(Collectors.joining(", "));
  }

  private final class Words implements Rule.Cases<String> {
    @Override
    public String pinned(Rule.Pinned rule) {
      return names.hiker(rule.hiker()) + " carries " + pieces(rule.pieces()) + ".";
    }

    @Override
    public String only(Rule.Only rule) {
      return "Only " + hikers(rule.hikers()) + " may carry " + pieces(rule.pieces()) + ".";
    }

    @Override
    public String barred(Rule.Barred rule) {
      return "Barred from carrying " + pieces(rule.pieces()) + ": " + hikers(rule.hikers()) + ".";
    }

    @Override
    public String together(Rule.Together rule) {
      return "In one pack: " + pieces(rule.pieces()) + ".";
    }

    @Override
    public String apart(Rule.Apart rule) {
      return "Never two of these in one pack: " + pieces(rule.pieces()) + ".";
    }

    @Override
    public String partyHas(Rule.PartyHas rule) {
      String who =
          rule.parties().isEmpty()
              ? "Every party"
              : "Each of the parties " + String.join(", ", rule.parties());
      return who + " has at least " + rule.atLeast() + " that cover " + rule.covers() + ".";
    }
  }

  private static final Rule.Cases<String> KIND =
      new Rule.Cases<>() {
        @Override
        public String pinned(Rule.Pinned rule) {
          return "pinned";
        }

        @Override
        public String only(Rule.Only rule) {
          return "only";
        }

        @Override
        public String barred(Rule.Barred rule) {
          return "barred";
        }

        @Override
        public String together(Rule.Together rule) {
          return "together";
        }

        @Override
        public String apart(Rule.Apart rule) {
          return "apart";
        }

        @Override
        public String partyHas(Rule.PartyHas rule) {
          return "party-has";
        }
      };
}
