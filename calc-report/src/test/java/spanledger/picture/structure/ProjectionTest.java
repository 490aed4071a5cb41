package spanledger.picture.structure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import spanledger.frame.MemberRole;
import spanledger.frame.Vector;
import spanledger.picture.Spot;
import spanledger.picture.page.Box;

class ProjectionTest {

  /** Rounding of products of numbers of size 1e4. */
  private static final double ROUNDING = 1e-9;

  private static final Box ROOM = new Box(0, 0, 800, 500);

  private static final List<Projection> ALL =
      List.of(
          Projection.plan(),
          Projection.level(new Vector(0, -1, 0)),
          Projection.level(new Vector(1, 0, 0)),
          Projection.general(true),
          Projection.general(false));

  @Test
  void directionsAreSquareToEachOtherAndOfLengthOne() {
    for (Projection one : ALL) {
      assertThat(one.right().norm()).isEqualTo(1, within(ROUNDING));
      assertThat(one.up().norm()).isEqualTo(1, within(ROUNDING));
      assertThat(one.right().dot(one.up())).isEqualTo(0, within(ROUNDING));
      assertThat(one.right().cross(one.up()).minus(one.towardsEye()).norm())
          .isEqualTo(0, within(ROUNDING));
    }
  }

  /** Given a look from the south: east is to the right. From the east: north is to the right. */
  @Test
  void elevationsAreAsOneSeesThem() {
    assertThat(Projection.level(new Vector(0, -1, 0)).right().x()).isEqualTo(1);
    assertThat(Projection.level(new Vector(1, 0, 0)).right().y()).isEqualTo(1);
  }

  @Property(tries = 100)
  void uprightLinesAreUprightAndSquareSizesAreTrue(
      @ForAll @DoubleRange(min = -1e4, max = 1e4) double x,
      @ForAll @DoubleRange(min = -1e4, max = 1e4) double y,
      @ForAll @DoubleRange(min = 1, max = 1e4) double height) {
    Vector foot = new Vector(x, y, 0);
    Vector top = new Vector(x, y, height);
    for (Projection one : List.of(Projection.general(true), Projection.general(false))) {
      Placing placing = Placing.filling(one, List.of(foot, top, Vector.ZERO), ROOM);
      assertThat(placing.spot(top).x()).isEqualTo(placing.spot(foot).x(), within(1e-6));
      assertThat(placing.spot(top).y()).isLessThan(placing.spot(foot).y());
    }
    Placing plan = Placing.toScale(Projection.plan(), List.of(foot, Vector.ZERO), ROOM);
    Spot from = plan.spot(Vector.ZERO);
    assertThat(plan.spot(foot).distance(from))
        .isEqualTo(Math.hypot(x, y) * plan.scale(), within(1e-6));
  }

  /** Given 1:25 and 2500 mm: 100 mm of paper, which is 100 / 25.4 inches of 96 units. */
  @Test
  void printedScalesAreTrue() {
    List<Vector> places = List.of(Vector.ZERO, new Vector(4800, 0, 0), new Vector(0, 1000, 0));

    Placing placing = Placing.toScale(Projection.plan(), places, ROOM);

    assertThat(placing.words()).isEqualTo("1:25");
    assertThat(placing.spot(new Vector(2500, 0, 0)).distance(placing.spot(Vector.ZERO)))
        .isEqualTo(100 / 25.4 * 96, within(1e-9));
    Box box = placing.box(places);
    assertThat(box.left()).isGreaterThanOrEqualTo(ROOM.left());
    assertThat(box.right()).isLessThanOrEqualTo(ROOM.right());
  }

  /**
   * A post through a floor of 2 m by 2 m at 1 m: what is below the floor is behind it from above.
   */
  @Test
  void aFloorHidesWhatIsBelowIt() {
    Veil floor =
        new Veil(
            List.of(
                new Vector(0, 0, 1000),
                new Vector(2000, 0, 1000),
                new Vector(2000, 2000, 1000),
                new Vector(0, 2000, 1000)));
    Bar post =
        new Bar(
            "post",
            new Vector(1000, 1000, 0),
            new Vector(1000, 1000, 2000),
            BarStyle.of(MemberRole.LEG));

    List<Veil.Stretch> fromAbove =
        Veil.stretches(post, List.of(floor), Projection.plan().towardsEye());
    List<Veil.Stretch> fromBeside = Veil.stretches(post, List.of(floor), new Vector(0, -1, 0));

    assertThat(fromAbove).hasSize(2);
    assertThat(fromAbove.get(0).hidden()).isTrue();
    assertThat(fromAbove.get(0).to()).isEqualTo(0.5, within(1e-3));
    assertThat(fromAbove.get(1).hidden()).isFalse();
    assertThat(fromBeside).containsExactly(new Veil.Stretch(0, 1, false));
  }

  /** Members in the floor itself are seen. */
  @Test
  void aFloorDoesNotHideItsOwnMembers() {
    Veil floor =
        new Veil(List.of(new Vector(0, 0, 0), new Vector(2000, 0, 0), new Vector(2000, 2000, 0)));

    assertThat(floor.hides(new Vector(1500, 500, 0), Projection.general(true).towardsEye()))
        .isFalse();
    assertThat(floor.hides(new Vector(1500, 500, -2), new Vector(0, 0, 1))).isTrue();
    assertThat(floor.hides(new Vector(500, 1500, -2), new Vector(0, 0, 1))).isFalse();
  }
}
