package spanledger.verification.joint;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import spanledger.joint.sharing.BoltPlace;
import spanledger.joint.sharing.ContactPoint;
import spanledger.joint.sharing.FaceForces;
import spanledger.joint.sharing.JointGeometry;
import spanledger.joint.sharing.KeyPlace;

/** The joints of the data file. */
final class GivenJoint {

  private GivenJoint() {}

  static JointGeometry geometry(JsonNode given) {
    List<ContactPoint> contacts = new ArrayList<>();
    for (JsonNode c : given.required("contacts")) {
      contacts.add(
          new ContactPoint(
              c.get(0).asText(), c.get(1).asDouble(), c.get(2).asDouble(), c.get(3).asDouble()));
    }
    if (given.has("bed")) {
      JsonNode bed = given.get("bed");
      contacts.addAll(
          ContactPoint.rectangle(
              "bed",
              bed.get(0).asDouble(),
              bed.get(1).asDouble(),
              bed.get(2).asDouble(),
              bed.get(3).asDouble(),
              bed.get(4).asInt(),
              bed.get(5).asInt(),
              bed.get(6).asDouble()));
    }
    return new JointGeometry(bolts(given), keys(given), contacts);
  }

  static List<BoltPlace> bolts(JsonNode given) {
    List<BoltPlace> bolts = new ArrayList<>();
    for (JsonNode b : given.required("bolts")) {
      bolts.add(
          new BoltPlace(
              b.get(0).asText(),
              b.get(1).asDouble(),
              b.get(2).asDouble(),
              b.get(3).asDouble(),
              b.get(4).asDouble(),
              b.get(5).asDouble()));
    }
    return bolts;
  }

  private static List<KeyPlace> keys(JsonNode given) {
    List<KeyPlace> keys = new ArrayList<>();
    for (JsonNode k : given.required("keys")) {
      keys.add(
          new KeyPlace(
              k.get(0).asText(),
              k.get(1).asDouble(),
              k.get(2).asDouble(),
              k.get(3).asDouble(),
              k.get(4).asDouble(),
              k.get(5).asDouble(),
              k.get(6).asDouble()));
    }
    return keys;
  }

  static FaceForces forces(JsonNode given) {
    JsonNode f = given.required("forces");
    return new FaceForces(
        f.get(0).asDouble(),
        f.get(1).asDouble(),
        f.get(2).asDouble(),
        f.get(3).asDouble(),
        f.get(4).asDouble(),
        f.get(5).asDouble());
  }
}
