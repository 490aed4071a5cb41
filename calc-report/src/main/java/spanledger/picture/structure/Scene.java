package spanledger.picture.structure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import spanledger.action.Surface;
import spanledger.frame.Node;
import spanledger.frame.Vector;
import spanledger.picture.Drawing;
import spanledger.picture.Ink;
import spanledger.picture.Pen;
import spanledger.picture.Spot;
import spanledger.picture.Trace;
import spanledger.picture.page.Labels;

/** Bars and floors that are drawn together, the farthest first. */
final class Scene {

  private static final Ink FLOOR = new Ink(0xF1F3EE);
  private static final Pen FLOOR_EDGE = Pen.full(new Ink(0xB9C2C0), 0.6);

  private final List<Bar> bars = new ArrayList<>();
  private final List<Veil> veils = new ArrayList<>();

  void add(Bar bar) {
    bars.add(bar);
  }

  void add(Surface surface) {
    veils.add(new Veil(surface.corners().stream().map(Node::place).toList()));
  }

  /** What is drawn, in the order in which it was added. */
  List<Bar> bars() {
    return List.copyOf(bars);
  }

  /** A stretch with its order. */
  private record Piece(Bar bar, Veil.Stretch stretch, double nearness) {}

  /** Draws all of it. */
  void draw(Drawing.Paper paper, Labels labels, Placing placing) {
    for (Veil veil : veils) {
      List<Spot> rim = veil.corners().stream().map(placing::spot).toList();
      paper.area(Trace.through(rim, true), FLOOR, FLOOR_EDGE);
    }
    Vector eye = placing.projection().towardsEye();
    List<Piece> pieces = new ArrayList<>();
    for (Bar bar : bars) {
      for (Veil.Stretch stretch : Veil.stretches(bar, veils, eye)) {
        Vector middle = bar.at((stretch.from() + stretch.to()) / 2);
        pieces.add(new Piece(bar, stretch, placing.projection().nearness(middle)));
      }
    }
    pieces.sort(
        Comparator.comparing((Piece piece) -> !piece.stretch().hidden())
            .thenComparingDouble(Piece::nearness));
    for (Piece piece : pieces) {
      Spot from = placing.spot(piece.bar().at(piece.stretch().from()));
      Spot to = placing.spot(piece.bar().at(piece.stretch().to()));
      BarStyle style = piece.bar().style();
      (piece.stretch().hidden() ? style.behind() : style).draw(paper, from, to);
      labels.avoid(from, to);
    }
  }
}
