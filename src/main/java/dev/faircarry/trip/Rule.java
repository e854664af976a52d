package dev.faircarry.trip;

import java.util.List;

/**
 * What must hold of every split. Each kind has one answer in {@link Cases}, so that a new kind
 * cannot be forgotten.
 */
public sealed interface Rule {
  /** Id of the rule in its trip. */
  String id();

  /** The named hiker carries all the pieces, while on the trip. */
  record Pinned(String id, List<PieceRef> pieces, String hiker) implements Rule {
    public Pinned {
      pieces = List.copyOf(pieces);
    }
  }

  /** Nobody but the named hikers carries the pieces, while one of them is on the trip. */
  record Only(String id, List<PieceRef> pieces, List<String> hikers) implements Rule {
    public Only {
      pieces = List.copyOf(pieces);
      hikers = List.copyOf(hikers);
    }
  }

  /** None of the named hikers carries any of the pieces. */
  record Barred(String id, List<PieceRef> pieces, List<String> hikers) implements Rule {
    public Barred {
      pieces = List.copyOf(pieces);
      hikers = List.copyOf(hikers);
    }
  }

  /** One hiker holds all the pieces. */
  record Together(String id, List<PieceRef> pieces) implements Rule {
    public Together {
      pieces = List.copyOf(pieces);
    }
  }

  /** Nobody holds pieces of two of the references; units of one may share a pack. */
  record Apart(String id, List<PieceRef> pieces) implements Rule {
    public Apart {
      pieces = List.copyOf(pieces);
    }
  }

  /**
   * On every morning each named party with somebody present has at least so many complete items or
   * unused units that cover the need, in own kit or shared pieces.
   *
   * @param covers the need
   * @param parties names of parties; empty for all
   */
  record PartyHas(String id, String covers, List<String> parties, int atLeast) implements Rule {
    public PartyHas {
      parties = List.copyOf(parties);
    }
  }

  /** One answer for each kind of rule. */
  interface Cases<R> {
    R pinned(Pinned rule);

    R only(Only rule);

    R barred(Barred rule);

    R together(Together rule);

    R apart(Apart rule);

    R partyHas(PartyHas rule);
  }

  /** Asks {@code cases} for the answer that goes with this rule. */
  default <R> R match(Cases<R> cases) {
    if (this instanceof Pinned rule) {
      return cases.pinned(rule);
    }
    if (this instanceof Only rule) {
      return cases.only(rule);
    }
    if (this instanceof Barred rule) {
      return cases.barred(rule);
    }
    if (this instanceof Together rule) {
      return cases.together(rule);
    }
    if (this instanceof Apart rule) {
      return cases.apart(rule);
    }
    return cases.partyHas((PartyHas) this);
  }
}
