package hutchleaf.page;

import hutchleaf.edition.Edition;
import hutchleaf.edition.OwnRabbit;
import hutchleaf.edition.Packet;
import hutchleaf.model.Block.Picture;
import hutchleaf.model.Breed;
import hutchleaf.model.Drawing;
import hutchleaf.model.JudgeQuestion;
import hutchleaf.model.Level;
import hutchleaf.model.Rabbit;
import hutchleaf.page.PacketView.AskView;
import hutchleaf.page.PacketView.BuildView;
import hutchleaf.page.PacketView.FactView;
import hutchleaf.page.PacketView.FindView;
import hutchleaf.page.PacketView.RabbitView;
import hutchleaf.page.PacketView.TickView;
import hutchleaf.problem.Place;
import hutchleaf.rabbit.Answer;
import hutchleaf.rabbit.Comments;
import hutchleaf.rabbit.Findings;
import hutchleaf.rabbit.OwnQuestions;
import hutchleaf.rabbit.Point;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Makes the pages about one rabbit: what the judge should find, its breed, comments to build, likely questions. */
final class RabbitPages {
    private static final String LOP = "lop";

    /** What the strip and the introduction say already. */
    private static final Set<Point> TOLD = EnumSet.of(
            Point.BREED, Point.VARIETY, Point.SEX, Point.AGE, Point.SHOW_CLASS, Point.WEIGHT, Point.EAR_NUMBER);

    private final Findings findings;
    private final Level level;
    private final Map<String, Drawing> drawings;
    private final FigureViews figures;
    private final Markup markup;

    private RabbitPages(OwnRabbit rabbit, Edition edition, FigureViews figures, Markup markup) {
        this.findings = rabbit.findings();
        this.level = edition.level();
        this.drawings = edition.library().tables().drawings();
        this.figures = figures;
        this.markup = markup;
    }

    static RabbitView of(OwnRabbit rabbit, Packet packet, FigureViews figures, Markup markup, String anchor) {
        return new RabbitPages(rabbit, packet.edition(), figures, markup).view(anchor);
    }

    private RabbitView view(String anchor) {
        List<Comments.Comment> comments = Comments.of(findings, level);
        return new RabbitView(
                anchor,
                findings.rabbit().map(Rabbit::name).orElse(""),
                Stream.of(Point.BREED, Point.VARIETY, Point.SHOW_CLASS, Point.AGE, Point.EAR_NUMBER)
                        .map(point -> fact(findings, point, false))
                        .toList(),
                figures.roomFor(pictures().stream()
                        .filter(picture -> drawings.containsKey(picture.file()))
                        .toList()),
                findings.lines().stream()
                        .filter(line -> !TOLD.contains(line.point()))
                        .map(this::find)
                        .toList(),
                breed(),
                findings.rabbit().map(Rabbit::breedName).orElse(""),
                comments.stream()
                        .filter(Comments.Tick.class::isInstance)
                        .map(tick -> new TickView(((Comments.Tick) tick).sentence()))
                        .toList(),
                comments.stream()
                        .filter(Comments.Build.class::isInstance)
                        .map(build -> build((Comments.Build) build))
                        .toList(),
                Comments.GRADES,
                OwnQuestions.of(findings, level).stream().map(this::ask).toList());
    }

    /** A point of the findings; what is not known leaves a line to write on. */
    static FactView fact(Findings findings, Point point, boolean why) {
        Answer answer = findings.answer(point);
        boolean known = answer instanceof Answer.Known;
        return new FactView(
                point.label(),
                known ? Optional.of(new Xml(Xml.escape(((Answer.Known) answer).words()))) : Optional.empty(),
                why && known ? Optional.of(answer.basis()) : Optional.empty());
    }

    private FindView find(Findings.Line line) {
        return new FindView(
                line.point() == Point.NAILS ? line.stop() + ", 11" : String.valueOf(line.stop()),
                line.point().label(),
                found(line.answer()),
                Optional.of(line.say()).filter(say -> !say.isEmpty()));
    }

    private Xml found(Answer answer) {
        return answer instanceof Answer.Known known
                ? new Xml(Xml.escape(known.words()))
                : new Xml(check(level).text() + "<span class=\"write\">\u00A0</span>");
    }

    /** Where to look what is not known. */
    static Xml check(Level level) {
        String where = level == Level.PRIMARY ? "ask a grown-up" : "check your breed standard";
        return new Xml("<span class=\"check\">" + where + "</span>");
    }

    private static BuildView build(Comments.Build build) {
        return new BuildView(build.part(), build.praise(), build.lookFor(), build.start());
    }

    private AskView ask(JudgeQuestion question) {
        int points = question.points().size();
        return new AskView(
                markup.write(question.question()),
                question.enough() < points ? "any " + question.enough() : "",
                markup.writeAll(question.points()));
    }

    /** The breed's row in full; a cell that rests on memory is a line to write on. */
    private List<FactView> breed() {
        return findings.rabbit().flatMap(Rabbit::breed).map(RabbitPages::row).orElse(List.of());
    }

    private static List<FactView> row(Breed breed) {
        return List.of(
                cell(breed, "Body type", "body type", breed.bodyType()),
                cell(breed, "Pose", "pose", breed.pose()),
                cell(breed, "Ears", "ears", breed.ears()),
                cell(breed, "Fur", "fur", breed.fur()),
                cell(breed, "Show classes", "classes", breed.classes() == 4 ? "four" : "six"),
                cell(
                        breed,
                        "Senior buck",
                        "senior buck",
                        breed.weights().unit().limits(breed.weights().buck())),
                cell(
                        breed,
                        "Senior doe",
                        "senior doe",
                        breed.weights().unit().limits(breed.weights().doe())),
                cell(
                        breed,
                        "Judges look for",
                        "judges look for",
                        breed.showing().judgesLookFor()),
                cell(breed, "You may say", "say", "\u201C" + breed.showing().say() + "\u201D"));
    }

    private static FactView cell(Breed breed, String label, String column, String value) {
        boolean sure = breed.basis().sure(column) && !value.isEmpty() && !value.equals("unknown");
        return new FactView(label, sure ? Optional.of(new Xml(Xml.escape(value))) : Optional.empty(), Optional.empty());
    }

    private List<Picture> pictures() {
        Optional<Breed> breed = findings.rabbit().flatMap(Rabbit::breed);
        if (breed.isEmpty()) {
            return List.of(head(false));
        }
        Breed found = breed.get();
        Picture head = head(found.ears().equals(LOP));
        return found.basis().sure("body type") ? List.of(body(found), head) : List.of(head);
    }

    private static Picture body(Breed breed) {
        boolean up = breed.bodyType().equals("compact") && breed.pose().contains("head up");
        return picture(
                "figures/body-" + breed.bodyType() + (up ? "-head-up" : "") + ".svg",
                "A rabbit of the " + breed.bodyType() + " body type in its pose, from the side.",
                "The " + breed.bodyType() + " type, " + breed.pose());
    }

    private static Picture head(boolean lop) {
        return lop
                ? picture(
                        "figures/lop-head-front.svg",
                        "The head of a lop from the front; the ears hang down beside the cheeks.",
                        "A lop's head: ears hang beside the cheeks")
                : picture(
                        "figures/head-front.svg",
                        "The head of a rabbit from the front; the ears stand up.",
                        "A head from the front: both eyes, both ears");
    }

    private static Picture picture(String file, String alt, String caption) {
        return new Picture(Place.whole(file), file, Picture.Use.PLAIN, alt, caption);
    }
}
