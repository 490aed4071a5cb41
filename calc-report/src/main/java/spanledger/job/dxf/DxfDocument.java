package spanledger.job.dxf;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import spanledger.section.outline.Point;

/**
 * The parts of a drawing that matter for outlines.
 *
 * @param unitCode the header's {@code $INSUNITS}
 * @param blocks blocks by name in small letters
 * @param entities what is drawn in model space
 */
record DxfDocument(OptionalInt unitCode, Map<String, Block> blocks, List<DxfEntity> entities) {

  DxfDocument {
    blocks = Map.copyOf(blocks);
    entities = List.copyOf(entities);
  }

  /**
   * A block.
   *
   * @param base the point that an insertion puts in place
   * @param entities what it is made of
   */
  record Block(Point base, List<DxfEntity> entities) {
    Block {
      entities = List.copyOf(entities);
    }
  }

  /** Sorts the groups of a drawing. */
  static DxfDocument of(DxfFile file) {
    OptionalInt unit = OptionalInt.empty();
    Map<String, Block> blocks = new HashMap<>();
    List<DxfEntity> entities = new ArrayList<>();
    List<DxfTag> tags = file.tags();
    for (int i = 0; i + 1 < tags.size(); i++) {
      if (!tags.get(i).is(0, "SECTION")) {
        continue;
      }
      int end = i;
      while (end < tags.size() && !tags.get(end).is(0, "ENDSEC")) {
        end++;
      }
      List<DxfTag> section = tags.subList(i + 2, Math.max(i + 2, Math.min(end, tags.size())));
      switch (tags.get(i + 1).value()) {
        case "HEADER" -> unit = unit(section);
        case "BLOCKS" -> blocks.putAll(blocks(entities(section)));
        case "ENTITIES" -> entities.addAll(entities(section));
        default -> {}
      }
      i = end;
    }
    return new DxfDocument(unit, blocks, entities);
  }

  private static OptionalInt unit(List<DxfTag> header) {
    for (int i = 0; i + 1 < header.size(); i++) {
      if (header.get(i).is(9, "$INSUNITS")) {
        return OptionalInt.of((int) DxfEntity.number(header.get(i + 1)));
      }
    }
    return OptionalInt.empty();
  }

  private static Map<String, Block> blocks(List<DxfEntity> section) {
    Map<String, Block> blocks = new HashMap<>();
    Optional<DxfEntity> head = Optional.empty();
    List<DxfEntity> content = new ArrayList<>();
    for (DxfEntity entity : section) {
      if (entity.type().equals("BLOCK")) {
        head = Optional.of(entity);
        content.clear();
      } else if (entity.type().equals("ENDBLK") && head.isPresent()) {
        DxfEntity block = head.get();
        blocks.put(
            block.text(2, "").toLowerCase(Locale.ROOT),
            new Block(new Point(block.number(10, 0), block.number(20, 0)), content));
      } else {
        content.add(entity);
      }
    }
    return blocks;
  }

  /** Splits groups into entities; vertices go to their POLYLINE. */
  private static List<DxfEntity> entities(List<DxfTag> section) {
    List<DxfEntity> flat = new ArrayList<>();
    int i = 0;
    while (i < section.size()) {
      DxfTag head = section.get(i);
      int end = i + 1;
      while (end < section.size() && section.get(end).code() != 0) {
        end++;
      }
      if (head.code() == 0) {
        flat.add(new DxfEntity(head.value(), head.line(), section.subList(i + 1, end), List.of()));
      }
      i = end;
    }
    List<DxfEntity> entities = new ArrayList<>();
    for (int e = 0; e < flat.size(); e++) {
      DxfEntity entity = flat.get(e);
      if (!entity.type().equals("POLYLINE")) {
        entities.add(entity);
        continue;
      }
      List<DxfEntity> vertices = new ArrayList<>();
      while (e + 1 < flat.size() && flat.get(e + 1).type().equals("VERTEX")) {
        vertices.add(flat.get(++e));
      }
      if (e + 1 < flat.size() && flat.get(e + 1).type().equals("SEQEND")) {
        e++;
      }
      entities.add(new DxfEntity(entity.type(), entity.line(), entity.tags(), vertices));
    }
    return entities;
  }
}
