package spanledger.workbook.layout;

import org.apache.poi.ss.usermodel.BorderStyle;

/**
 * The look of each role. Kinds of numbers differ by their edges as well as by colour: given ones
 * are boxed, solver values are boxed with dots, formulas are not boxed, residuals are slanted.
 */
final class Looks {

  private static final Look HEAD = Look.PLAIN.on(Colour.HEAD_FILL).centred().wrapped();
  private static final Look SMALL = Look.PLAIN.sized(8).centred().wrapped();
  private static final Look RULED = Look.PLAIN.edged(Edges.below(BorderStyle.HAIR, Colour.RULE));
  private static final Look NUMBER = RULED.right();
  private static final Edges ABOVE_AND_BELOW =
      new Edges(
          BorderStyle.MEDIUM,
          BorderStyle.NONE,
          BorderStyle.MEDIUM,
          BorderStyle.NONE,
          Colour.STRONG_RULE);
  private static final Edges BAR = Edges.left(BorderStyle.THICK, Colour.BAD_FILL);

  private Looks() {}

  static Look of(CellRole role) {
    return switch (role) {
      case TITLE -> Look.PLAIN.sized(15).inBold().in(Colour.HEADING);
      case CAPTION -> Look.PLAIN.in(Colour.QUIET);
      case HEADING -> Look.PLAIN.sized(11).inBold().in(Colour.HEADING);
      case NOTE, UNRULED_WRAPPED -> Look.PLAIN.wrapped();
      case COLUMN_SYMBOL ->
          HEAD.inBold().edged(Edges.above(BorderStyle.MEDIUM, Colour.STRONG_RULE));
      case COLUMN_UNIT -> HEAD.slanted().edged(Edges.below(BorderStyle.MEDIUM, Colour.STRONG_RULE));
      case COLUMN_ALONE -> HEAD.inBold().edged(ABOVE_AND_BELOW);
      case COLUMN_WORDS, COLUMN_FORMULA -> SMALL;
      case COLUMN_LAST -> SMALL.edged(Edges.below(BorderStyle.THIN, Colour.STRONG_RULE));
      case COLUMN_SOURCE ->
          SMALL.in(Colour.QUIET).edged(Edges.below(BorderStyle.THIN, Colour.STRONG_RULE));
      case LABEL, TEXT -> RULED;
      case WRAPPED -> RULED.wrapped();
      case LINK -> RULED.in(Colour.HEADING);
      case SYMBOL -> RULED.inBold();
      case UNIT -> RULED.in(Colour.QUIET).indented();
      case SOURCE -> RULED.sized(8).in(Colour.QUIET).wrapped();
      case NUMBERS_TEXT -> RULED.in(Colour.QUIET).wrapped();
      case COUNT, FORMULA -> NUMBER;
      case GIVEN ->
          NUMBER.on(Colour.GIVEN_FILL).edged(Edges.box(BorderStyle.THIN, Colour.STRONG_RULE));
      case SOLVED ->
          NUMBER.on(Colour.SOLVED_FILL).edged(Edges.box(BorderStyle.DOTTED, Colour.STRONG_RULE));
      case RESIDUAL -> NUMBER.slanted().in(Colour.QUIET);
      case OUTCOME -> RULED.centred();
      case UNRULED -> Look.PLAIN;
      case UNRULED_SYMBOL -> Look.PLAIN.inBold();
      case UNRULED_UNIT -> Look.PLAIN.in(Colour.QUIET).indented();
      case UNRULED_NUMBER -> Look.PLAIN.right();
      case UNRULED_OUTCOME -> Look.PLAIN.centred();
      case DRIVER ->
          Look.PLAIN
              .sized(11)
              .inBold()
              .centred()
              .on(Colour.GIVEN_FILL)
              .edged(Edges.box(BorderStyle.THICK, Colour.STRONG_RULE));
      case CAUTION_HEAD ->
          Look.PLAIN.indented().sized(10).inBold().on(Colour.CAUTION_FILL).edged(BAR);
      case CAUTION -> Look.PLAIN.indented().wrapped().on(Colour.CAUTION_FILL).edged(BAR);
      case FIELD -> Look.PLAIN.low().edged(Edges.below(BorderStyle.THIN, Colour.STRONG_RULE));
    };
  }
}
