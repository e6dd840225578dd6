package hutchleaf.cli;

import hutchleaf.content.ContentTree;
import hutchleaf.content.LibraryReader;
import hutchleaf.model.Card;
import hutchleaf.model.Club;
import hutchleaf.model.Level;
import hutchleaf.model.Library;
import hutchleaf.page.CardPapers;
import hutchleaf.page.Publications;
import hutchleaf.page.Spelled;
import hutchleaf.press.Press;
import hutchleaf.press.Printed;
import hutchleaf.problem.Place;
import hutchleaf.problem.Problem;
import hutchleaf.problem.Problems;
import hutchleaf.sheet.CardFormat;
import hutchleaf.sheet.Sides;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;

/** Prints the cards that were asked for. */
final class CardsRun {
    /** A finished file; empty where it could not be printed. */
    private record Made(CardJob job, Optional<Printed> printed) {}

    /** What a job gave, with what is wrong. */
    private record Done(List<Made> made, Problems problems) {}

    private final CardsOptions options;
    private final PrintWriter out;
    private final PrintWriter err;
    private final Problems problems = new Problems();

    CardsRun(CardsOptions options, PrintWriter out, PrintWriter err) {
        this.options = options;
        this.out = out;
        this.err = err;
    }

    int run() {
        ContentTree tree = Embedded.contentOr(options.files().content());
        Optional<Library> library = LibraryReader.read(tree, problems);
        if (library.isEmpty() || problems.hasErrors()) {
            return refused();
        }
        Problems asked = new Problems();
        List<CardJob> jobs = new CardChoice(library.get(), options, asked).jobs();
        if (asked.hasErrors()) {
            asked.sorted().forEach(err::println);
            return Exit.WRONG_ARGUMENTS;
        }
        List<Done> done = SideBySide.run(jobs.stream()
                .<Callable<Done>>map(job -> () -> print(job, library.get(), tree))
                .toList());
        done.forEach(each -> problems.addAll(each.problems()));
        if (problems.hasErrors()) {
            return refused();
        }
        problems.sorted().forEach(err::println);
        write(jobs, done.stream().flatMap(each -> each.made().stream()).toList());
        return Exit.DONE;
    }

    private int refused() {
        problems.sorted().forEach(err::println);
        err.println("Nothing was written.");
        return Exit.CONTENT_TO_MEND;
    }

    private Done print(CardJob job, Library library, ContentTree tree) {
        Problems own = new Problems();
        Publications publications = new Publications(
                SaverOption.templates(
                        options.files().templates(), options.files().saver(), Club.Saver.NO),
                options.files().paper(),
                Spelled.of(library.wording(), options.files().spelling()));
        Press press = new Press(tree::bytes);
        List<Made> made = new ArrayList<>();
        for (CardJob part : split(job, publications, press, own)) {
            CardPapers.checkPictures(part.edition(), part.cards(), part.form().format(), own);
            made.add(new Made(
                    part,
                    publications
                            .cards()
                            .some(part.edition(), part.cards(), part.form(), part.part(), own)
                            .flatMap(pages -> press.print(pages, own))
                            .map(pages -> options.printer()
                                    .correct(pages, part.form().making().way().backs(), part.pdf(), own))));
        }
        return new Done(made, own);
    }

    /** Cards that a small card cannot hold go to a file of their own, in the level's usual size. */
    private List<CardJob> split(CardJob job, Publications publications, Press press, Problems own) {
        if (job.form().format() != CardFormat.SMALL || options.overfull() == CardsOptions.Overfull.ERROR) {
            return List.of(job);
        }
        Problems fit = new Problems();
        CardPapers.checkPictures(job.edition(), job.cards(), job.form().format(), fit);
        publications
                .cards()
                .some(job.edition(), job.cards(), job.form(), job.part(), fit)
                .ifPresent(pages -> press.checkFit(pages, fit));
        Set<Place> places = fit.sorted().stream().map(Problem::place).collect(Collectors.toSet());
        List<Card> over =
                job.cards().stream().filter(card -> places.contains(card.at())).toList();
        if (over.isEmpty()) {
            return List.of(job);
        }
        CardJob others =
                job.beside(over, CardPapers.usualForm(job.edition().level()).made(options.making()));
        own.warn(
                Place.whole(job.pdf()),
                "a small card cannot hold " + over.size() + " of its "
                        + job.cards().size() + " cards: "
                        + over.stream().map(card -> card.code().toString()).collect(Collectors.joining(", ")),
                "print " + others.pdf() + " too");
        List<Card> rest =
                job.cards().stream().filter(card -> !over.contains(card)).toList();
        return rest.isEmpty() ? List.of(others) : List.of(job.only(rest), others);
    }

    private void write(List<CardJob> jobs, List<Made> made) {
        Table table = new Table();
        try (Outputs outputs =
                new Outputs(options.files().out(), "cards", options.files().pictures())) {
            for (Made file : made) {
                file.printed().ifPresent(pdf -> {
                    outputs.add(file.job().pdf(), pdf);
                    Sides sides = file.job().form().making().way().twoSided() ? Sides.TWO : Sides.ONE;
                    table.add(file.job().pdf(), pdf.pages(), sides.sheets(pdf.pages()), whom(file.job()));
                });
            }
            outputs.commitBeside(jobs.stream()
                    .flatMap(job -> List.of(
                            job.pdf(), job.beside(job.cards(), job.form()).pdf())
                            .stream())
                    .collect(Collectors.toSet()));
        }
        table.print(out);
    }

    private String whom(CardJob job) {
        boolean anyLevel =
                !options.which().codes().isEmpty() && options.which().level().isEmpty();
        Level level = job.edition().level();
        return anyLevel ? "members" : "members, " + level.word();
    }
}
