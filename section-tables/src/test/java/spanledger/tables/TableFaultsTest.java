package spanledger.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/**
 * Faults in data files are told in one line that names file and row. Each test spoils a sound file
 * in one place.
 */
class TableFaultsTest {

  private static final String RULES =
      """
      {
        "id": "own",
        "title": "Own rules",
        "railDirections": ["outward", "downward"],
        "figures": [
          {
            "id": "floor.area",
            "words": "imposed load on floors",
            "value": "2.5 kN/m2",
            "work": "A standard",
            "place": "1.2",
            "confidence": "published"
          },
          {
            "id": "floor.point",
            "words": "load at any one place",
            "value": "1.1 kN",
            "work": "A standard",
            "confidence": "from memory",
            "note": "to be confirmed"
          }
        ]
      }
      """;

  private static final String ALLOYS =
      """
      {
        "title": "Own alloys",
        "constants": {
          "youngsModulus": "70 GPa",
          "shearModulus": "27 GPa",
          "density": "2700 kg/m3",
          "work": "A standard",
          "confidence": "from memory"
        },
        "rows": [
          {
            "designation": "6999-T6",
            "forms": ["tube"],
            "over": "3 mm",
            "upTo": "5 mm",
            "proof": "150 MPa",
            "ultimate": "190 MPa",
            "bucklingClass": "A",
            "work": "A standard",
            "confidence": "published"
          }
        ]
      }
      """;

  private static final String COMBINATIONS =
      """
      {
        "id": "own",
        "title": "Own combinations",
        "factors": [
          {
            "id": "g",
            "words": "permanent",
            "value": "1.2",
            "work": "A standard",
            "confidence": "published"
          }
        ],
        "templates": [
          {
            "name": "1.2G",
            "limitState": "strength",
            "leading": "none",
            "factors": {"permanent": "g"},
            "notionalSway": true,
            "work": "A standard",
            "confidence": "published"
          }
        ]
      }
      """;

  @Test
  void soundFilesOfUsersAreRead() {
    assertThat(RuleTables.read("own.json", stream(RULES)).figure("floor.point").value())
        .isEqualTo(1100);
    assertThat(AlloyTables.read("own.json", stream(ALLOYS)).designations())
        .containsExactly("6999-T6");
    assertThat(CombinationTables.read("own.json", stream(COMBINATIONS)).templates()).hasSize(1);
  }

  @Test
  void brokenJsonIsToldWithItsPlace() {
    assertThatThrownBy(() -> RuleTables.read("own.json", stream("{\n  \"id\": oops\n}")))
        .isInstanceOf(TableFormatException.class)
        .hasMessageStartingWith("own.json, line 2, column ");
    assertThatThrownBy(() -> RuleTables.read("own.json", stream("[]")))
        .hasMessage("own.json: expected one JSON object.");
    rules("\"id\": \"own\",", "\"id\": \"own\", \"id\": \"again\",", "Duplicate field 'id'");
  }

  @Test
  void quantitiesAreToldWithTheirRow() {
    rules(
        "2.5 kN/m2",
        "2.5",
        "own.json, figures, row 1 (floor.area): \"value\": \"2.5\" has no unit; expected a stress, modulus or area load, for example 2.5 kN/m2.");
    rules(
        "1.1 kN",
        "-1.1 kN",
        "own.json, figures, row 2 (floor.point): \"value\" is negative; a figure must be 0 or more.");
    alloys(
        "190 MPa",
        "140 MPa",
        "own.json, rows, row 1 (6999-T6): Alloy 6999-T6 has an ultimate strength of 140.0 MPa, below its proof strength of 150.0 MPa.");
    alloys("3 mm", "6 mm", "own.json, rows, row 1 (6999-T6): A thickness range must start");
  }

  @Test
  void unknownWordsAreToldWithTheOneProbablyMeant() {
    rules(
        "floor.point",
        "floor.pint",
        "own.json, figures, row 2 (floor.pint): \"id\" is \"floor.pint\". Did you mean floor.point? Known: analysis.critical-factor, deck.opening-most, ");
    rules(
        "\"downward\"",
        "\"down\"",
        "own.json: \"railDirections\" is \"down\". Known: along, downward, inward, outward.");
    rules(
        "from memory",
        "from menory",
        "\"confidence\" is \"from menory\". Did you mean from memory?");
    rules(
        "\"note\"", "\"notes\"", "\"notes\" means nothing here. Did you mean note? Allowed: id, ");
    alloys("\"tube\"", "\"tubes\"", "\"forms\" is \"tubes\". Did you mean tube?");
    alloys("[\"tube\"]", "[]", "Alloy 6999-T6 has no product form.");
    combinations("\"none\"", "\"nothing\"", "\"leading\" is \"nothing\". Known: floor, ");
    combinations(
        "{\"permanent\": \"g\"}",
        "{\"permanent\": \"q\"}",
        "own.json, templates, row 1 (1.2G): \"permanent\" is \"q\". Known: g.");
    combinations(
        "{\"permanent\": \"g\"}",
        "{\"permanant\": \"g\"}",
        "\"factors\" is \"permanant\". Did you mean permanent?");
  }

  @Test
  void whatIsMissingOrOfAnotherKindIsTold() {
    rules("\"work\": \"A standard\",\n", "", "row 1 (floor.area): \"work\" is missing.");
    rules("\"own\"", "5", "own.json: \"id\" must be a text in quotation marks, not blank.");
    rules("\"own\"", "\" \"", "own.json: \"id\" must be a text in quotation marks, not blank.");
    combinations("true", "1", "\"notionalSway\" must be true or false.");
    combinations("{\"permanent\": \"g\"}", "[]", "\"factors\" must be an object.");
    combinations(
        "\"none\"",
        "\"floor\"",
        "\"factors\" lacks \"imposed\", the category of the leading action.");
    assertThatThrownBy(() -> RuleTables.read("own.json", stream("{\"figures\": [3]}")))
        .hasMessage("own.json, figures, row 1: expected an object.");
    assertThatThrownBy(() -> RuleTables.read("own.json", stream("{\"figures\": []}")))
        .hasMessage("own.json: \"figures\" has no rows.");
    assertThatThrownBy(() -> RuleTables.read("own.json", stream("{\"figures\": 3}")))
        .hasMessage("own.json: \"figures\" must be a list.");
  }

  @Test
  void whatIsGivenTwiceIsRefused() {
    String twice = spoil(spoil(RULES, "floor.point", "floor.area"), "1.1 kN", "1.1 kN/m2");
    assertThatThrownBy(() -> RuleTables.read("own.json", stream(twice)))
        .hasMessage("own.json, figures, row 2 (floor.area): this figure is given twice.");
  }

  private static void rules(String sound, String spoilt, String message) {
    assertThatThrownBy(() -> RuleTables.read("own.json", stream(spoil(RULES, sound, spoilt))))
        .isInstanceOf(TableFormatException.class)
        .hasMessageContaining(message);
  }

  private static void alloys(String sound, String spoilt, String message) {
    assertThatThrownBy(() -> AlloyTables.read("own.json", stream(spoil(ALLOYS, sound, spoilt))))
        .isInstanceOf(TableFormatException.class)
        .hasMessageContaining(message);
  }

  private static void combinations(String sound, String spoilt, String message) {
    assertThatThrownBy(
            () -> CombinationTables.read("own.json", stream(spoil(COMBINATIONS, sound, spoilt))))
        .isInstanceOf(TableFormatException.class)
        .hasMessageContaining(message);
  }

  private static String spoil(String file, String sound, String spoilt) {
    int place = file.indexOf(sound);
    assertThat(place).as("the sound text %s", sound).isNotNegative();
    return file.substring(0, place) + spoilt + file.substring(place + sound.length());
  }

  private static InputStream stream(String text) {
    return new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
  }
}
