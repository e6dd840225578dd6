package hutchleaf.model;

import hutchleaf.problem.Place;

/** A word to know and its meaning. */
public record Term(String term, Levels levels, Place at, Words meaning) {}
