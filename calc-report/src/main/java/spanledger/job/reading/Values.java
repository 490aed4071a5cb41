package spanledger.job.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import spanledger.frame.Vector;
import spanledger.job.source.Located;
import spanledger.job.source.Located.LocatedArray;
import spanledger.job.source.Located.LocatedNumber;
import spanledger.job.source.Located.LocatedText;
import spanledger.job.source.Quoted;
import spanledger.quantity.Dimension;
import spanledger.tables.QuantityFormatException;
import spanledger.tables.QuantityReader;

/** Decodes quantities, vectors and words. */
public final class Values {

  /** No quantity is longer than this, characters; it keeps messages short. */
  private static final int LONGEST_QUANTITY = 60;

  /**
   * Quantities in core units lie far within these, so that no product of a few of them leaves the
   * range of a double.
   */
  private static final double SMALLEST = 1e-12;

  private static final double LARGEST = 1e15;

  /** Radians are a plain number for the quantity reader, but an angle must show its unit. */
  private static final Pattern UNITLESS = Pattern.compile("[-+0-9.eE/\\s]*");

  private final Reading reading;

  public Values(Reading reading) {
    this.reading = reading;
  }

  /** A quantity in core units. */
  public Optional<Double> quantity(Located value, Dimension dimension) {
    String text;
    if (value instanceof LocatedText quantity) {
      text = quantity.text();
    } else if (value instanceof LocatedNumber number) {
      text = number.digits();
    } else {
      reading.gap(value.pointer());
      return Optional.empty();
    }
    try {
      if (text.length() > LONGEST_QUANTITY) {
        throw new NumberFormatException("too long");
      }
      double read = QuantityReader.read(text, dimension);
      if (value instanceof LocatedNumber) {
        reading.error(
            value,
            value.words(),
            "a number in quotation marks, so that a unit or fraction can stand with it",
            "write \"" + text + "\"");
        return Optional.empty();
      }
      double size = Math.abs(read);
      if (size != 0 && (size < SMALLEST || size > LARGEST)) {
        reading.error(
            value, value.words() + ", which is beyond all size", "a usual size", "correct it");
        return Optional.empty();
      }
      return Optional.of(read);
    } catch (QuantityFormatException e) {
      reading.error(
          value, Quoted.shortened(e.found()), e.expected(), remedy(value, e.remedy().strip()));
    } catch (NumberFormatException e) {
      reading.error(
          value, value.words(), "a number with a unit, for example \"150 mm\"", "shorten it");
    }
    return Optional.empty();
  }

  private static String remedy(Located value, String given) {
    if (!given.isEmpty()) {
      return given;
    }
    return value instanceof LocatedNumber
        ? "write number and unit together in quotation marks"
        : "correct the number or its unit";
  }

  /** An angle, rad; one without a unit is left to the schema. */
  public Optional<Double> angle(Located value) {
    if (value instanceof LocatedText text && UNITLESS.matcher(text.text()).matches()) {
      reading.gap(value.pointer());
      return Optional.empty();
    }
    return quantity(value, Dimension.NONE);
  }

  /** A quantity that must be greater than zero. */
  public Optional<Double> positive(Located value, Dimension dimension) {
    Optional<Double> read = quantity(value, dimension);
    if (read.isPresent() && read.get() <= 0) {
      reading.error(value, value.words(), "more than zero", "correct the number");
      return Optional.empty();
    }
    return read;
  }

  /** A quantity that must not be less than zero; a pure number is an angle. */
  public Optional<Double> notNegative(Located value, Dimension dimension) {
    Optional<Double> read = dimension.isNone() ? angle(value) : quantity(value, dimension);
    if (read.isPresent() && read.get() < 0) {
      reading.error(value, value.words(), "zero or more", "correct the number");
      return Optional.empty();
    }
    return read;
  }

  /** Three quantities along X, Y and Z. */
  public Optional<Vector> vector(Located value, Dimension dimension) {
    if (!(value instanceof LocatedArray list) || list.elements().size() != 3) {
      reading.gap(value.pointer());
      return Optional.empty();
    }
    List<Double> read = new ArrayList<>();
    for (Located element : list.elements()) {
      quantity(element, dimension).ifPresent(read::add);
    }
    return read.size() == 3
        ? Optional.of(new Vector(read.get(0), read.get(1), read.get(2)))
        : Optional.empty();
  }

  /**
   * Whether a text does not even begin like a quantity; the schema reports it with the words that
   * it may be.
   */
  public static boolean isWord(Located value) {
    return value instanceof LocatedText text
        && !text.text().isBlank()
        && Character.isLetter(text.text().strip().charAt(0));
  }

  /** One of some words; the schema reports any other. */
  public <T> Optional<T> word(Located value, Map<String, T> known) {
    if (value instanceof LocatedText text) {
      T meaning = known.get(text.text());
      if (meaning != null) {
        return Optional.of(meaning);
      }
    }
    reading.gap(value.pointer());
    return Optional.empty();
  }
}
