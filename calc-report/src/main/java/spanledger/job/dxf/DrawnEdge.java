package spanledger.job.dxf;

import spanledger.section.outline.Edge;
import spanledger.section.outline.Similarity;

/**
 * An edge and the entity that draws it.
 *
 * @param edge in the drawing's unit until {@link #moved}
 * @param entity the entity
 */
record DrawnEdge(Edge edge, DxfEntity entity) {

  DrawnEdge moved(Similarity similarity) {
    return new DrawnEdge(edge.moved(similarity), entity);
  }
}
