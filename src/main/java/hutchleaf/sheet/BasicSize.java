package hutchleaf.sheet;

/** The sheets whose 500 give a North American paper its weight in pounds; trade sizes, in inches. */
public enum BasicSize {
    /** Office paper: 17 by 22, four letter sheets. */
    BOND(17, 22),
    /** 20 by 26. */
    COVER(20, 26),
    /** 22.5 by 28.5. */
    BRISTOL(22.5, 28.5),
    /** 25.5 by 30.5. */
    INDEX(25.5, 30.5);

    private final double squareMetres;

    BasicSize(double widthInches, double heightInches) {
        this.squareMetres =
                Length.inches(widthInches).mm() * Length.inches(heightInches).mm() / 1e6;
    }

    double squareMetres() {
        return squareMetres;
    }
}
