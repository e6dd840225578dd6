package hutchleaf.page;

import java.util.List;

/**
 * What the template of primary's slip sees.
 *
 * @param gap air under each line to tick, in millimetres
 */
record WentWellView(Look look, String club, String title, List<Xml> ticks, double gap) {}
