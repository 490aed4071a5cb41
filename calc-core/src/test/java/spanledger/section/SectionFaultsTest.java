package spanledger.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import spanledger.procedure.OutOfDomainException;
import spanledger.provenance.Source;

/** Outlines that make no sense are refused, and the message names the size. */
class SectionFaultsTest {

  @Test
  void aWallThatLeavesNoHollowIsRefused() {
    assertThatThrownBy(() -> new RectangularHollow(100, 50, 25, 3))
        .hasMessage(
            "The web thickness of a rectangular hollow section is 25 mm, but must be less than half the width (25 mm).");
    assertThatThrownBy(() -> RectangularHollow.uniform(40, 100, 30))
        .hasMessage(
            "The flange thickness of a rectangular hollow section is 30 mm, but must be less than half the depth (20 mm).");
    assertThatThrownBy(() -> new RoundHollow(40, 20))
        .hasMessage(
            "The thickness of a round hollow section is 20 mm, but must be less than half the diameter (20 mm).");
  }

  @Test
  void flangesThatLeaveNoWebAreRefused() {
    assertThatThrownBy(() -> new Channel(40, 30, 20, 4))
        .hasMessage(
            "The flange thickness of a channel is 20 mm, but must be less than half the depth (20 mm).");
    assertThatThrownBy(() -> new ISection(100, 4, 5, 4))
        .hasMessage(
            "The web thickness of an I-section is 4 mm, but must be less than the width (4 mm).");
    assertThatThrownBy(() -> new Angle(50, 5, 5))
        .hasMessage("The thickness of an angle is 5 mm, but must be less than the width (5 mm).");
  }

  @Test
  void sizesMustBePositiveNumbers() {
    assertThatThrownBy(() -> new SolidRound(0))
        .hasMessage("The diameter of a solid round is 0 mm, but must be greater than 0.");
    assertThatThrownBy(() -> new SolidRectangle(-1, 5)).hasMessageContaining("The depth");
    assertThatThrownBy(() -> new SolidRectangle(5, Double.NaN)).hasMessageContaining("is NaN mm");
    assertThatThrownBy(() -> new RoundHollow(Double.POSITIVE_INFINITY, 1))
        .hasMessageContaining("The diameter");
  }

  @Test
  void rowsOfPropertiesNameTheValueThatIsMissing() {
    assertThatThrownBy(() -> new Section("row", row(0, 2, 3)))
        .isInstanceOf(OutOfDomainException.class)
        .hasMessage("Properties as published: area (A) is 0 mm², but must be greater than 0.");
    assertThatThrownBy(() -> row(100, 4, 3))
        .hasMessage(
            "The thinnest wall of a row of properties is 4.0 mm, but must not exceed the thickest wall (3.0 mm).");
  }

  @Test
  void aSectionKeepsThePropertiesOfItsShape() {
    Section section = new Section("post", new RoundHollow(48.3, 4));
    assertThat(section.properties().area()).isGreaterThan(0);
    assertThatThrownBy(() -> new Section("post", new RoundHollow(48.3, 3), section.properties()))
        .hasMessage("The properties of section post are not those of its shape.");
  }

  private static PropertyRow row(double area, double thinnest, double thickest) {
    return new PropertyRow(
        area,
        50,
        50,
        1e4,
        1e4,
        1e3,
        1e3,
        1e3,
        100,
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        thinnest,
        thickest,
        Optional.empty(),
        Source.declared("test"));
  }
}
