package spanledger.picture.structure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import spanledger.picture.Drawing;
import spanledger.picture.Ink;
import spanledger.picture.Mark;
import spanledger.picture.Spot;
import spanledger.picture.page.Box;
import spanledger.picture.page.Labels;

class LabelsTest {

  private static final Box PAPER = new Box(0, 0, 400, 300);

  /** However crowded, labels that are offered either find room of their own or are left out. */
  @Property(tries = 60)
  void offeredLabelsNeverOverlapAndStayOnThePaper(@ForAll long seed) {
    Random random = new Random(seed);
    Drawing.Paper paper = new Drawing.Paper();
    Labels labels = new Labels(paper, Example.LETTERING, PAPER);
    int written = 0;
    for (int i = 0; i < 60; i++) {
      Spot at = new Spot(400 * random.nextDouble(), 300 * random.nextDouble());
      if (i % 5 == 0) {
        labels.avoid(at, new Spot(400 * random.nextDouble(), 300 * random.nextDouble()));
      }
      written += labels.offer(at, "floor1/edge-" + i, 11, Ink.BLACK) ? 1 : 0;
    }
    List<Box> boxes = boxes(paper.finish(400, 300, "", ""));

    assertThat(boxes).hasSize(written);
    for (int i = 0; i < boxes.size(); i++) {
      Box box = boxes.get(i);
      assertThat(box.left()).isGreaterThanOrEqualTo(0);
      assertThat(box.right()).isLessThanOrEqualTo(400);
      for (int j = 0; j < i; j++) {
        assertThat(box.meets(boxes.get(j))).isFalse();
      }
    }
  }

  /** The room of all words of a drawing, without the rim that nothing is written in. */
  static List<Box> boxes(Drawing drawing) {
    List<Box> boxes = new ArrayList<>();
    for (Mark mark : drawing.marks()) {
      if (mark instanceof Mark.Words words) {
        double width = Example.LETTERING.width(words.words(), words.size());
        Box level = Box.ofWords(words.at(), width, words.size(), words.anchor());
        boxes.add((words.turn() == 0 ? level : turned(words, width)).grown(-1.2));
      }
    }
    return boxes;
  }

  /** Words that run upwards: the letters stand to the left of their base line. */
  private static Box turned(Mark.Words words, double width) {
    double before = width * words.anchor().ordinal() / 2.0;
    double low = words.at().y() + before;
    return new Box(
        words.at().x() - 0.76 * words.size(),
        low - width,
        words.at().x() + 0.24 * words.size(),
        low);
  }
}
