package hutchleaf.page;

import java.util.List;

/** What the template of primary's slip sees. */
record WentWellView(Look look, String club, String title, List<Xml> ticks) {}
