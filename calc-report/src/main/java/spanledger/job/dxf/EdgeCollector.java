package spanledger.job.dxf;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import spanledger.job.source.Quoted;
import spanledger.section.outline.Point;
import spanledger.section.outline.Similarity;

/** Gathers the edges of a drawing, insertions of blocks exploded. */
final class EdgeCollector {

  /** Blocks within blocks; deeper ones go round in a circle. */
  private static final int DEEPEST = 16;

  private static final int MOST_COPIES = 1000;
  private static final Set<String> CURVES = Set.of("SPLINE", "ELLIPSE", "HELIX");

  /** Entities that only help to draw; ignored without a word. */
  private static final Set<String> SILENT = Set.of("VIEWPORT", "ATTRIB", "ATTDEF", "SEQEND");

  private final DxfDocument document;
  private final Set<String> layers;
  private final DxfLog log;
  private final List<DrawnEdge> edges = new ArrayList<>();
  private final Map<String, Integer> ignored = new TreeMap<>();
  private final Set<String> seenLayers = new TreeSet<>();

  EdgeCollector(DxfDocument document, Set<String> layers, DxfLog log) {
    this.document = document;
    this.layers = layers.stream().map(l -> l.toLowerCase(Locale.ROOT)).collect(Collectors.toSet());
    this.log = log;
  }

  /** The edges in the drawing's unit; tells what was left out and what cannot be used. */
  List<DrawnEdge> collect() {
    collect(document.entities(), "", UnaryOperator.identity(), 0);
    if (!ignored.isEmpty()) {
      String counted =
          ignored.entrySet().stream()
              .map(e -> e.getValue() + " " + e.getKey())
              .collect(Collectors.joining(", "));
      log.warning(
          0,
          "entities that draw no outline, passed over: " + counted,
          "lines, arcs, circles, polylines and insertions of blocks",
          "look whether one of them was meant as part of the outline");
    }
    Set<String> unknown = new TreeSet<>(layers);
    unknown.removeAll(seenLayers);
    for (String layer : unknown) {
      log.error(
          0,
          "nothing on layer " + Quoted.text(layer),
          "one of the layers " + seenLayers.stream().map(Quoted::text).toList(),
          "correct the layer");
    }
    return edges;
  }

  /**
   * Collects entities of the drawing or of a block.
   *
   * @param inserted the layer of the insertion, which entities on layer 0 of a block take on
   */
  private void collect(
      List<DxfEntity> entities, String inserted, UnaryOperator<DrawnEdge> place, int depth) {
    for (DxfEntity entity : entities) {
      String layer = depth > 0 && entity.layer().equals("0") ? inserted : entity.layer();
      // Paper space and invisible entities are not part of what is drawn.
      if (entity.number(67, 0) != 0 || entity.number(60, 0) != 0) {
        continue;
      }
      try {
        if (entity.type().equals("INSERT")) {
          insert(entity, layer, place, depth);
        } else if (isWanted(layer)) {
          take(entity, place);
        }
      } catch (DxfFormatException e) {
        e.report(log);
      }
    }
  }

  private boolean isWanted(String layer) {
    seenLayers.add(layer);
    return layers.isEmpty() || layers.contains(layer);
  }

  private void take(DxfEntity entity, UnaryOperator<DrawnEdge> place) {
    if (EntityEdges.isKnown(entity)) {
      EntityEdges.of(entity).forEach(edge -> edges.add(place.apply(edge)));
    } else if (CURVES.contains(entity.type())) {
      log.error(
          entity.line(),
          entity.words(),
          "straight edges and circular arcs",
          "convert it to a polyline of lines and arcs where it was drawn, close enough for the"
              + " purpose, or move it to a layer that is left out");
    } else if (!SILENT.contains(entity.type())) {
      ignored.merge(entity.type(), 1, Integer::sum);
    }
  }

  private void insert(DxfEntity entity, String layer, UnaryOperator<DrawnEdge> place, int depth) {
    String name = entity.text(2, "").toLowerCase(Locale.ROOT);
    DxfDocument.Block block = document.blocks().get(name);
    if (block == null) {
      throw new DxfFormatException(
          entity.line(),
          "an insertion of block " + Quoted.text(entity.text(2, "")) + ", which is not there",
          "a block of the drawing");
    }
    if (depth >= DEEPEST) {
      throw new DxfFormatException(
          entity.line(),
          "blocks within blocks, more than " + DEEPEST + " deep",
          "blocks that do not contain themselves");
    }
    boolean below = EntityEdges.isFromBelow(entity);
    double scaleX = entity.number(41, 1);
    double scaleY = entity.number(42, 1);
    if (scaleX == 0 || Math.abs(Math.abs(scaleX / scaleY) - 1) > 1e-9) {
      throw new DxfFormatException(
          entity.line(),
          "an insertion with scales " + scaleX + " and " + scaleY + ", which distorts arcs",
          "insertions with one scale; explode this one where it was drawn");
    }
    Similarity scaled =
        new Similarity(
            scaleX * scaleY < 0, scaleY < 0 ? Math.PI : 0, Math.abs(scaleX), new Point(0, 0));
    Similarity turned = Similarity.rotation(Math.toRadians(entity.number(50, 0)));
    Point at = entity.point(10);
    long columns = Math.max(1, (long) entity.number(70, 1));
    long rows = Math.max(1, (long) entity.number(71, 1));
    if (columns * rows > MOST_COPIES) {
      throw new DxfFormatException(
          entity.line(), columns * rows + " copies of one block", "the outline of one section");
    }
    Similarity based = Similarity.shift(-block.base().y(), -block.base().z());
    for (long column = 0; column < columns; column++) {
      for (long row = 0; row < rows; row++) {
        Similarity spaced =
            Similarity.shift(column * entity.number(44, 0), row * entity.number(45, 0));
        UnaryOperator<DrawnEdge> inner =
            edge -> {
              DrawnEdge there =
                  edge.moved(based)
                      .moved(scaled)
                      .moved(spaced)
                      .moved(turned)
                      .moved(Similarity.shift(at.y(), at.z()));
              return place.apply(below ? there.moved(Similarity.mirrorY()) : there);
            };
        collect(block.entities(), layer, inner, depth + 1);
      }
    }
  }
}
