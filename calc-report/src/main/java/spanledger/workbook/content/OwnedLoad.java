package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.List;
import spanledger.action.LoadOrigin;
import spanledger.action.SegmentLoad;

/** A load on a segment with the case it belongs to. */
record OwnedLoad(KeptCases.Kept kept, SegmentLoad load) {

  /** All loads of all cases, in order. */
  static List<OwnedLoad> of(KeptCases kept) {
    List<OwnedLoad> all = new ArrayList<>();
    for (KeptCases.Kept one : kept.cases()) {
      one.loads().segmentLoads().forEach(l -> all.add(new OwnedLoad(one, l)));
    }
    return all;
  }

  /** Why a load per length has its size, also of one that stands on a member end. */
  static LoadOrigin perLength(SegmentLoad load) {
    return load.origin() instanceof LoadOrigin.BeyondEnd beyond
        ? beyond.perLength()
        : load.origin();
  }

  /** Why a load has its size. */
  static String words(LoadOrigin origin) {
    if (origin instanceof LoadOrigin.OwnWeight) {
      return "own weight";
    } else if (origin instanceof LoadOrigin.AreaShare share) {
      return "area load on " + share.surface();
    } else if (origin instanceof LoadOrigin.Given given) {
      return given.what();
    } else if (origin instanceof LoadOrigin.Patch patch) {
      return patch.what() + " on its patch";
    } else if (origin instanceof LoadOrigin.BeyondEnd beyond) {
      return words(beyond.perLength()) + ", beyond the end";
    }
    return "sway of " + words(((LoadOrigin.Notional) origin).vertical());
  }
}
