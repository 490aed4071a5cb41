package spanledger.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import spanledger.action.LoadAxes;
import spanledger.action.SegmentLoad;
import spanledger.frame.Segment;
import spanledger.frame.Vector;

/** Loads on a member of two segments, 1500 mm each: beam-a of complete.json. */
class MemberLoadsTest {

  private static final List<Segment> SEGMENTS = segments();
  private static final MemberLoads LOADS =
      new MemberLoads(SEGMENTS, new Directions.Direction(LoadAxes.GLOBAL, Vector.DOWN), "test");

  @Test
  void aForceStandsOnTheSegmentWhereItsPlaceIs() {
    SegmentLoad.Point point = (SegmentLoad.Point) LOADS.point(1000, 2000);

    assertThat(point.segment().order()).isEqualTo(1);
    // 2000 mm - 1500 mm
    assertThat(point.at()).isEqualTo(500);
  }

  @Test
  void aForceAtTheVeryEndsStandsOnTheMember() {
    assertThat(((SegmentLoad.Point) LOADS.point(1, 0)).at()).isZero();
    assertThat(((SegmentLoad.Point) LOADS.point(1, 3000.5)).at()).isEqualTo(1500);
  }

  /** 1 to 4 N/mm between 1000 and 2500 mm: 2 N/mm per metre, so 2 N/mm at the inner node. */
  @Test
  void aRisingLoadIsCutAtTheInnerNode() {
    List<SegmentLoad> parts = LOADS.distributed(1, 4, 1000, 2500);

    assertThat(parts).hasSize(2);
    SegmentLoad.Distributed first = (SegmentLoad.Distributed) parts.get(0);
    assertThat(List.of(first.from(), first.to(), first.intensityFrom(), first.intensityTo()))
        .containsExactly(1000.0, 1500.0, 1.0, 2.0);
    SegmentLoad.Distributed second = (SegmentLoad.Distributed) parts.get(1);
    assertThat(List.of(second.from(), second.to(), second.intensityFrom(), second.intensityTo()))
        .containsExactly(0.0, 1000.0, 2.0, 4.0);
  }

  /** Cutting loses no load and no moment; tolerance: rounding of sums of size 1e7. */
  @Property
  void cuttingKeepsForceAndMoment(
      @ForAll @DoubleRange(min = 0, max = 1400) double from,
      @ForAll @DoubleRange(min = 100, max = 1600) double length,
      @ForAll @DoubleRange(min = -5, max = 5) double start,
      @ForAll @DoubleRange(min = -5, max = 5) double end) {
    double force = 0;
    double moment = 0;
    for (SegmentLoad load : LOADS.distributed(start, end, from, from + length)) {
      SegmentLoad.Distributed part = (SegmentLoad.Distributed) load;
      double run = part.to() - part.from();
      double mean = (part.intensityFrom() + part.intensityTo()) / 2;
      double begin = 1500 * part.segment().order() + part.from();
      force += mean * run;
      moment +=
          mean * run * begin + run * run * (part.intensityFrom() + 2 * part.intensityTo()) / 6;
    }
    // resultant of a trapezoid and its moment about the member's start
    double whole = (start + end) / 2 * length;
    assertThat(force).isCloseTo(whole, within(1e-7));
    assertThat(moment)
        .isCloseTo(whole * from + length * length * (start + 2 * end) / 6, within(1e-4));
  }

  private static List<Segment> segments() {
    Job job = ((ReadJob.Accepted) Jobs.read(Jobs.resource("complete.json"))).job();
    return job.frame().segmentsOf(job.frame().members().get(0));
  }
}
