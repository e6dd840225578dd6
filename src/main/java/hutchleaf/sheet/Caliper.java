package hutchleaf.sheet;

import java.util.List;

/** How thick a sheet of office paper is. */
public final class Caliper {
    private record Known(double gsm, Length thickness) {}

    /**
     * 20 lb bond and 24 lb bond from a paper merchant's table (mcgpaper.com: 75.2 g/m² 0.0038 in, 90.3 g/m² 0.0048 in);
     * 80 g/m² from a prepress site (prepressure.com: about 0.004 in).
     */
    private static final List<Known> TABLE = List.of(
            new Known(75.2, Length.inches(0.0038)),
            new Known(80, Length.inches(0.004)),
            new Known(90.3, Length.inches(0.0048)));

    private Caliper() {}

    /** The thickness of one sheet: on a straight line between the known papers, in proportion to weight outside them. */
    public static Length of(Grammage paper) {
        Known below = TABLE.get(0);
        if (paper.gsm() <= below.gsm()) {
            return proportional(below, paper);
        }
        for (Known above : TABLE.subList(1, TABLE.size())) {
            if (paper.gsm() <= above.gsm()) {
                double share = (paper.gsm() - below.gsm()) / (above.gsm() - below.gsm());
                return below.thickness()
                        .plus(above.thickness().minus(below.thickness()).times(share));
            }
            below = above;
        }
        return proportional(below, paper);
    }

    private static Length proportional(Known known, Grammage paper) {
        return known.thickness().times(paper.gsm() / known.gsm());
    }
}
