package hutchleaf.model;

import hutchleaf.problem.Place;

/**
 * A figure that members label themselves.
 *
 * @param figure its path from the content root
 * @param title the heading of its page
 * @param from the youngest level that gets it
 */
public record LabelIt(String figure, String title, Level from, Place at) {}
