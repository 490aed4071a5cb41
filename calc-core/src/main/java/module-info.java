/**
 * Pure calculation for modular aluminium access structures: no files, no JSON, no spreadsheets.
 *
 * <p>An export is added here with the first public type of its package.
 */
module spanledger.core {
  requires ejml.core;
  requires ejml.ddense;
  requires ejml.dsparse;
  requires commons.math3;
  requires org.locationtech.jts;
  requires TinfourCore;
  requires static transitive org.jspecify;

  exports spanledger.action;
  exports spanledger.analysis;
  exports spanledger.assembly;
  exports spanledger.behaviour;
  exports spanledger.bolt;
  exports spanledger.deck;
  exports spanledger.envelope;
  exports spanledger.frame;
  exports spanledger.geometry;
  exports spanledger.joint;
  exports spanledger.jointdesign;
  exports spanledger.joint.sharing;
  exports spanledger.joint.stiffness;
  exports spanledger.material;
  exports spanledger.memberdesign;
  exports spanledger.overturning;
  exports spanledger.parts;
  exports spanledger.procedure;
  exports spanledger.provenance;
  exports spanledger.quantity;
  exports spanledger.resistance.adm;
  exports spanledger.resistance.asnzs1664;
  exports spanledger.resistance.en1999;
  exports spanledger.resistance.joint;
  exports spanledger.resistance.member;
  exports spanledger.resistance;
  exports spanledger.robustness;
  exports spanledger.section.feature;
  exports spanledger.section.mesh;
  exports spanledger.section.outline;
  exports spanledger.section.plate;
  exports spanledger.section.warping;
  exports spanledger.section;
  exports spanledger.sparse;
  exports spanledger.stability;
  exports spanledger.state;
  exports spanledger.verdict;
  exports spanledger.vibration;
}
