package hutchleaf.page;

import hutchleaf.model.Setting;

/** What has a template of its own for settings in which pages flow, since the ordinary one has a fixed place for everything. */
enum Form {
    PACKET("packet-read.ftl", "packet-open.ftl"),
    SCORE_SHEET("score-sheet.ftl", "score-open.ftl"),
    QUESTIONS("questions.ftl", "questions-open.ftl"),
    WENT_WELL("went-well.ftl", "went-well-open.ftl"),
    JUDGE_FRONT("judge-front.ftl", "judge-front-open.ftl"),
    JUDGE_SEAL("judge-seal.ftl", "judge-seal-open.ftl"),
    JUDGE_BACK("judge-back.ftl", "judge-back-open.ftl");

    private final String ordinary;
    private final String open;

    Form(String ordinary, String open) {
        this.ordinary = ordinary;
        this.open = open;
    }

    String template(Setting setting) {
        return setting == Setting.ORDINARY ? ordinary : open;
    }
}
