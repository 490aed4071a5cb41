package spanledger.verification.frame;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import spanledger.action.LoadAxes;
import spanledger.action.LoadCase;
import spanledger.action.LoadOrigin;
import spanledger.action.NodalLoad;
import spanledger.action.SegmentLoad;
import spanledger.frame.Frame;
import spanledger.frame.Member;
import spanledger.frame.MemberEnd;
import spanledger.frame.MemberRole;
import spanledger.frame.Node;
import spanledger.frame.Restraint;
import spanledger.frame.Support;
import spanledger.frame.Vector;

/**
 * A random connected frame in space with all that a frame may have: unequal sections, rolls,
 * springs and pins at member ends, rigid arms, loads on nodes and members.
 *
 * @param places of the nodes, mm
 * @param bars the members
 * @param clamped which nodes are held completely
 * @param forces on the nodes
 * @param moments on the nodes
 */
record RandomFrame(
    List<Vector> places,
    List<Bar> bars,
    List<Boolean> clamped,
    List<Vector> forces,
    List<Vector> moments) {

  static final double BOX = 3_000;

  /**
   * A member.
   *
   * @param from place of its first node
   * @param to place of its last node
   * @param area A, mm²
   * @param shearY A_v_y, mm²
   * @param shearZ A_v_z, mm²
   * @param inertiaY I_y, mm⁴
   * @param inertiaZ I_z, mm⁴
   * @param torsion I_t, mm⁴
   * @param roll rad
   * @param start joint
   * @param end joint
   * @param load its load
   */
  record Bar(
      int from,
      int to,
      double area,
      double shearY,
      double shearZ,
      double inertiaY,
      double inertiaZ,
      double torsion,
      double roll,
      MemberEnd start,
      MemberEnd end,
      Load load) {

    Bar withRoll(double other) {
      return new Bar(
          from, to, area, shearY, shearZ, inertiaY, inertiaZ, torsion, other, start, end, load);
    }

    Bar withEnds(MemberEnd first, MemberEnd second) {
      return new Bar(
          from, to, area, shearY, shearZ, inertiaY, inertiaZ, torsion, roll, first, second, load);
    }
  }

  /**
   * A trapezoid over part of a member and a force on it, as shares of its length.
   *
   * @param direction global, of length 1
   * @param first N/mm where it begins
   * @param second N/mm where it ends
   * @param from where it begins, per length
   * @param to where it ends, per length
   * @param force N
   * @param at where the force stands, per length
   */
  record Load(
      Vector direction,
      double first,
      double second,
      double from,
      double to,
      double force,
      double at) {
    Load withDirection(Vector other) {
      return new Load(other, first, second, from, to, force, at);
    }

    /** The same on a member drawn the other way round. */
    Load reversed() {
      return new Load(
          direction, /* first= */ second, /* second= */ first, 1 - to, 1 - from, force, 1 - at);
    }
  }

  static RandomFrame make(Random random) {
    int count = 3 + random.nextInt(6);
    List<Vector> places = new ArrayList<>();
    List<Boolean> clamped = new ArrayList<>();
    List<Vector> forces = new ArrayList<>();
    List<Vector> moments = new ArrayList<>();
    while (places.size() < count) {
      Vector place =
          new Vector(
              random.nextDouble() * BOX, random.nextDouble() * BOX, random.nextDouble() * BOX);
      if (places.stream().allMatch(p -> p.minus(place).norm() > BOX / 10)) {
        places.add(place);
        clamped.add(places.size() <= 2);
        forces.add(direction(random).times(1_000 * random.nextDouble()));
        moments.add(direction(random).times(1e5 * random.nextDouble()));
      }
    }
    List<Bar> bars = new ArrayList<>();
    for (int node = 1; node < count; node++) {
      bars.add(bar(random, random.nextInt(node), node));
    }
    for (int extra = random.nextInt(4); extra > 0; extra--) {
      int from = random.nextInt(count);
      int to = random.nextInt(count);
      if (from != to) {
        bars.add(bar(random, from, to));
      }
    }
    return new RandomFrame(places, bars, clamped, forces, moments);
  }

  private static Bar bar(Random random, int from, int to) {
    double from01 = 0.6 * random.nextDouble();
    Load load =
        new Load(
            direction(random),
            random.nextDouble() * 4 - 2,
            random.nextDouble() * 4 - 2,
            from01,
            from01 + 0.1 + 0.3 * random.nextDouble(),
            random.nextDouble() * 500,
            random.nextDouble());
    return new Bar(
        from,
        to,
        between(random, 500, 4_000),
        between(random, 200, 2_000),
        between(random, 200, 2_000),
        between(random, 1e5, 1e7),
        between(random, 1e5, 1e7),
        between(random, 1e4, 1e7),
        random.nextDouble() * 6 - 3,
        end(random),
        end(random),
        load);
  }

  /** No pins: a random tree with pins would be a mechanism; soft springs come close enough. */
  private static MemberEnd end(Random random) {
    return new MemberEnd(
        hold(random),
        hold(random),
        hold(random),
        random.nextInt(3) == 0 ? direction(random).times(100) : Vector.ZERO);
  }

  private static Restraint hold(Random random) {
    return random.nextInt(3) == 0
        ? new Restraint.Spring(between(random, 1e6, 1e10))
        : Restraint.FIXED;
  }

  private static double between(Random random, double least, double most) {
    return least * Math.pow(most / least, random.nextDouble());
  }

  static Vector direction(Random random) {
    return new Vector(random.nextGaussian(), random.nextGaussian(), random.nextGaussian()).unit();
  }

  /** The same with every bar replaced. */
  RandomFrame withBars(UnaryOperator<Bar> change) {
    return new RandomFrame(places, bars.stream().map(change).toList(), clamped, forces, moments);
  }

  /** The same turned in space; bars keep their rolls from the upright plane. */
  RandomFrame turned(UnaryOperator<Vector> turn) {
    Function<MemberEnd, MemberEnd> end =
        e -> new MemberEnd(e.torsion(), e.aboutY(), e.aboutZ(), turn.apply(e.offset()));
    return new RandomFrame(
        places.stream().map(turn).toList(),
        bars.stream()
            .map(
                b ->
                    new Bar(
                        b.from(),
                        b.to(),
                        b.area(),
                        b.shearY(),
                        b.shearZ(),
                        b.inertiaY(),
                        b.inertiaZ(),
                        b.torsion(),
                        b.roll(),
                        end.apply(b.start()),
                        end.apply(b.end()),
                        b.load().withDirection(turn.apply(b.load().direction()))))
            .toList(),
        clamped,
        forces.stream().map(turn).toList(),
        moments.stream().map(turn).toList());
  }

  Frame frame() {
    List<Node> nodes = nodes();
    List<Member> members = new ArrayList<>();
    for (Bar bar : bars) {
      String name = "bar " + members.size();
      members.add(
          new Member(
              name,
              MemberRole.OTHER,
              List.of(nodes.get(bar.from()), nodes.get(bar.to())),
              GivenBar.section(
                  name,
                  bar.area(),
                  bar.shearY(),
                  bar.shearZ(),
                  bar.inertiaY(),
                  bar.inertiaZ(),
                  bar.torsion()),
              GivenBar.alloy(name, 70_000, 27_000),
              bar.roll(),
              bar.start(),
              bar.end()));
    }
    List<Support> supports = new ArrayList<>();
    for (int i = 0; i < nodes.size(); i++) {
      if (clamped.get(i)) {
        supports.add(new Support(nodes.get(i), Collections.nCopies(6, Restraint.FIXED)));
      }
    }
    return new Frame(nodes, members, supports);
  }

  private List<Node> nodes() {
    List<Node> nodes = new ArrayList<>();
    for (Vector place : places) {
      nodes.add(new Node("N" + nodes.size(), place));
    }
    return nodes;
  }

  /** Only the loads on nodes. */
  LoadCase nodal(String name, Frame frame) {
    List<NodalLoad> loads = new ArrayList<>();
    for (int i = 0; i < places.size(); i++) {
      loads.add(new NodalLoad(frame.nodes().get(i), forces.get(i), moments.get(i), name));
    }
    return new LoadCase(name, loads, List.of());
  }

  /** Only the loads on members. */
  LoadCase along(String name, Frame frame) {
    List<SegmentLoad> loads = new ArrayList<>();
    for (int i = 0; i < bars.size(); i++) {
      Load load = bars.get(i).load();
      double length = frame.segments().get(i).length();
      loads.add(
          new SegmentLoad.Distributed(
              frame.segments().get(i),
              LoadAxes.GLOBAL,
              load.direction(),
              new LoadOrigin.Given(name),
              load.first(),
              load.second(),
              load.from() * length,
              load.to() * length));
      loads.add(point(name, frame, i));
    }
    return new LoadCase(name, List.of(), loads);
  }

  /** The force on one member alone. */
  SegmentLoad.Point point(String name, Frame frame, int bar) {
    Load load = bars.get(bar).load();
    return new SegmentLoad.Point(
        frame.segments().get(bar),
        LoadAxes.GLOBAL,
        load.direction(),
        new LoadOrigin.Given(name),
        load.force(),
        load.at() * frame.segments().get(bar).length());
  }

  /** All loads. */
  LoadCase both(String name, Frame frame) {
    return new LoadCase(name, nodal(name, frame).nodalLoads(), along(name, frame).segmentLoads());
  }
}
