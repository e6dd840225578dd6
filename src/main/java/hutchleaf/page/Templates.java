package hutchleaf.page;

import freemarker.cache.ClassTemplateLoader;
import freemarker.cache.FileTemplateLoader;
import freemarker.cache.TemplateLoader;
import freemarker.core.ParseException;
import freemarker.core.TemplateClassResolver;
import freemarker.core.XMLOutputFormat;
import freemarker.template.Configuration;
import freemarker.template.SimpleObjectWrapper;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import freemarker.template.TemplateNotFoundException;
import hutchleaf.model.Club;
import hutchleaf.problem.Place;
import hutchleaf.problem.Problems;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TimeZone;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * The templates, locked down: XHTML is escaped by itself, no class can be made, records arrive as maps, and an
 * undefined name stops the run with its line. Safe between threads.
 */
public final class Templates {
    /** Freemarker puts what failed on the line after its message, behind an arrow and before its place. */
    private static final Pattern FAILING = Pattern.compile(":\\s*\\R==> (.*?)(?: {2}\\[.*)?(?:\\R|$)");

    private static final String SAVER_STYLE = "saver-style.ftl";

    private final Configuration configuration;
    private final Spelled spelled;
    private final Club.Saver saver;

    private Templates(Configuration configuration, Spelled spelled, Club.Saver saver) {
        this.configuration = configuration;
        this.spelled = spelled;
        this.saver = saver;
    }

    private static Templates of(TemplateLoader loader) {
        Configuration locked = new Configuration(Configuration.VERSION_2_3_34);
        locked.setTemplateLoader(loader);
        locked.setDefaultEncoding("UTF-8");
        locked.setLocale(Locale.ROOT);
        locked.setTimeZone(TimeZone.getTimeZone("UTC"));
        locked.setNumberFormat("computer");
        locked.setOutputFormat(XMLOutputFormat.INSTANCE);
        locked.setRecognizeStandardFileExtensions(false);
        locked.setLocalizedLookup(false);
        locked.setNewBuiltinClassResolver(TemplateClassResolver.ALLOWS_NOTHING_RESOLVER);
        locked.setAPIBuiltinEnabled(false);
        locked.setObjectWrapper(new SimpleObjectWrapper(Configuration.VERSION_2_3_34));
        locked.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
        locked.setLogTemplateExceptions(false);
        locked.setWrapUncheckedExceptions(true);
        return new Templates(locked, Spelled.asWritten(Publications.LANGUAGE), Club.Saver.NO);
    }

    /** The templates inside the program. */
    public static Templates embedded() {
        return of(new ClassTemplateLoader(Templates.class.getClassLoader(), "embedded/templates"));
    }

    /** Templates of a folder; nothing outside it can be included. */
    public static Templates folder(Path folder) {
        try {
            return of(new FileTemplateLoader(folder.toFile()) {
                @Override
                public @Nullable Object findTemplateSource(String name) throws IOException {
                    try {
                        return super.findTemplateSource(name);
                    } catch (SecurityException e) {
                        // A symbolic link that leaves the folder: an author's mistake, told like a file that is
                        // missing.
                        return null;
                    }
                }
            });
        } catch (IOException e) {
            throw new UncheckedIOException("could not open " + folder, e);
        }
    }

    /** The same templates, whose pages are spelled this way. */
    public Templates in(Spelled spelling) {
        return new Templates(configuration, spelling, saver);
    }

    /** The same templates, whose pages save ink or do not: the style for it stands last on each. */
    public Templates saving(Club.Saver saving) {
        return new Templates(configuration, spelled, saving);
    }

    Spelled spelled() {
        return spelled;
    }

    /**
     * A filled template as a manuscript; its title is spelled as its words are.
     *
     * @param view a record made for it
     * @return empty when the template is wrong; the problem names its file and line
     */
    Optional<Manuscript> manuscript(String title, String name, Record view, Problems problems) {
        return fill(name, view, problems)
                .map(xhtml -> new Manuscript(spelled.text(title), spelled.language(), xhtml, shown(name)));
    }

    private Optional<String> fill(String name, Record view, Problems problems) {
        StringWriter filled = new StringWriter(1 << 16);
        try {
            configuration.getTemplate(name).process(TemplateValue.of(view), filled);
            String page = saver == Club.Saver.YES ? saved(filled.toString()) : filled.toString();
            return Optional.of(spelled.page(page));
        } catch (ParseException e) {
            add(problems, e.getTemplateName(), e.getLineNumber(), e.getEditorMessage());
        } catch (TemplateException e) {
            add(problems, e.getTemplateSourceName(), e.getLineNumber(), e.getMessageWithoutStackTop());
        } catch (TemplateNotFoundException e) {
            problems.add(Place.whole(shown(name)), "there is no such template", "put it back or use the embedded ones");
        } catch (IOException e) {
            throw new UncheckedIOException("could not read the template " + name, e);
        }
        return Optional.empty();
    }

    /** A page with the style that saves ink behind its own, and a word to the press for its drawings. */
    private String saved(String page) throws IOException, TemplateException {
        StringWriter style = new StringWriter();
        configuration.getTemplate(SAVER_STYLE).process(Map.of(), style);
        return page.replaceFirst("<html ", "<html data-ink=\"save\" ")
                .replaceFirst("</style>", Matcher.quoteReplacement(style + "</style>"));
    }

    private static void add(Problems problems, String name, Integer line, String message) {
        String first = FAILING.matcher(message.strip())
                .replaceFirst(": $1\n")
                .lines()
                .findFirst()
                .orElse(message)
                .strip();
        problems.add(
                new Place(shown(name), line == null ? 0 : line),
                "the template stops: " + first.replaceAll("[.:]$", ""),
                "mend the template, or leave --templates out to use the embedded ones");
    }

    private static String shown(String name) {
        return "templates/" + name;
    }
}
