package spanledger.verification.section;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;

/**
 * A file of section cases.
 *
 * @param title what the cases are about
 * @param cases the cases
 */
public record SectionCases(String title, List<SectionCase> cases) {

  /** The files beside this class, without the ending. */
  public static final List<String> FILES =
      List.of(
          "rectangles",
          "solids",
          "thin-walls",
          "plastic",
          "inclined",
          "warping",
          "aluminum-association-channels",
          "aluminum-association-i-beams");

  public SectionCases {
    cases = List.copyOf(cases);
  }

  /** Reads one of {@link #FILES}. */
  public static SectionCases read(String file) {
    ObjectMapper mapper = new ObjectMapper();
    // A value left out must not become a zero that anything agrees with.
    mapper.enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES);
    try (InputStream stream = SectionCases.class.getResourceAsStream(file + ".json")) {
      if (stream == null) {
        throw new IllegalArgumentException("There is no file of section cases " + file + ".json.");
      }
      return mapper.readValue(stream, SectionCases.class);
    } catch (IOException e) {
      throw new UncheckedIOException("Section cases " + file + " cannot be read.", e);
    }
  }
}
