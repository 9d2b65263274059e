package org.coatrun.shared.model;

/**
 * What a steel element does in the frame, as the model says; how it is connected is found later.
 */
public enum Role {
  COLUMN,
  BEAM,
  BRACE,
  JOIST,
  TRUSS,
  RAFTER,
  PURLIN,
  STUD,
  PLATE,
  MEMBER,
  FASTENER,
  OTHER
}
