package spanledger.picture;

import java.util.Locale;

/**
 * A colour.
 *
 * @param rgb red, green and blue, a byte each
 */
public record Ink(int rgb) {

  public static final Ink BLACK = new Ink(0x1F2933);
  public static final Ink QUIET = new Ink(0x59656D);
  public static final Ink PALE = new Ink(0xDDE3E3);
  public static final Ink WHITE = new Ink(0xFFFFFF);

  /** As six hexadecimal digits after a number sign. */
  public String hex() {
    return String.format(Locale.ROOT, "#%06x", rgb);
  }

  /** The colour between this one and another at the fraction {@code t} of the way. */
  public Ink towards(Ink other, double t) {
    int mixed = 0;
    for (int shift = 16; shift >= 0; shift -= 8) {
      int from = rgb >> shift & 0xFF;
      int to = other.rgb >> shift & 0xFF;
      mixed |= (int) Math.round(from + (to - from) * t) << shift;
    }
    return new Ink(mixed);
  }

  /** How bright it looks when printed in grey, from 0 to 1 (weights of ITU-R BT.601). */
  public double grey() {
    return (0.299 * (rgb >> 16 & 0xFF) + 0.587 * (rgb >> 8 & 0xFF) + 0.114 * (rgb & 0xFF)) / 255;
  }
}
