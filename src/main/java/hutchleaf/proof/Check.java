package hutchleaf.proof;

/** One rule, or a few that read the same lines. */
interface Check {
    void check(Material material, Findings findings);
}
