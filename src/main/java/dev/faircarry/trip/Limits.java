package dev.faircarry.trip;

/**
 * Every limit of a trip document, in one place; openapi/ states the same numbers and a test
 * compares them.
 */
public final class Limits {
  private Limits() {}

  public static final int DAYS = 30;
  public static final int HIKERS = 100;
  public static final int KIT_ITEMS_PER_HIKER = 200;
  public static final int SHARED_ITEMS = 500;
  public static final int PARTS_PER_ITEM = 50;

  /** Whole items, parts and units together. */
  public static final int PIECES = 1000;

  public static final int RULES = 200;
  public static final int NAMES_PER_RULE = 200;
  public static final int COVERS_PER_ITEM = 20;
  public static final int SLEEPS = 100;
  public static final int MIN_GRAIN_THOUSANDTHS = 1;
  public static final int MAX_GRAIN_THOUSANDTHS = 50;

  /** Ids, names of needs, kinds and parties. */
  public static final int ID_LENGTH = 40;

  public static final int NAME_LENGTH = 120;
  public static final int QUANTITY_LENGTH = 40;

  /** 5 kg to 400 kg. */
  public static final long MIN_BODY_MASS_MILLIGRAMS = 5_000_000L;

  public static final long MAX_BODY_MASS_MILLIGRAMS = 400_000_000L;

  /** 100 g to 200 kg. */
  public static final long MIN_TARGET_LOAD_MILLIGRAMS = 100_000L;

  public static final long MAX_TARGET_LOAD_MILLIGRAMS = 200_000_000L;

  /** One thing: at most 200 kg. */
  public static final long ITEM_MASS_MILLIGRAMS = 200_000_000L;

  /** Pack, container or thing: at most 1,000 L. */
  public static final long VOLUME_MILLILITERS = 1_000_000L;

  /** Target and cap fractions of body mass, in millionths: 0.01 to 1. */
  public static final long MIN_FRACTION_MILLIONTHS = 10_000L;

  public static final long MAX_FRACTION_MILLIONTHS = 1_000_000L;

  /** Each piece at every camp. */
  public static final int HANDOVERS_AT_CAMP = DAYS * PIECES;

  /** Changes of plans in one request. */
  public static final int CHANGES = 50;

  public static final int DOCUMENT_BYTES = 2_000_000;
  public static final int NESTING = 32;

  /** Most issues reported of one document. */
  public static final int ISSUES = 200;
}
