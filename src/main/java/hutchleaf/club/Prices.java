package hutchleaf.club;

import hutchleaf.content.FrontMatter.Field;
import hutchleaf.model.Club.Price;
import hutchleaf.problem.Problems;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads what a sheet costs: {@code $0.03}, {@code EUR 0.03}, {@code 0,03 €} or the amount alone. */
final class Prices {
    private static final String CURRENCY = "\\p{Sc}|[A-Z]{3}|[A-Z]{1,2}\\p{Sc}";
    private static final Pattern FORM = Pattern.compile(
            "(?<before>" + CURRENCY + ")?\\s*(?<amount>\\d{1,3}(?:[.,]\\d{1,4})?)\\s*(?<after>" + CURRENCY + ")?");

    private Prices() {}

    static Optional<Price> read(String key, Field field, Problems problems) {
        Matcher form = FORM.matcher(field.value());
        if (!form.matches() || (form.group("before") != null && form.group("after") != null)) {
            problems.add(
                    field.at(),
                    "cannot read the price '" + field.value() + "' in '" + key + "'",
                    "write it as $0.03, EUR 0.03 or 0.03");
            return Optional.empty();
        }
        String currency = Optional.ofNullable(form.group("before"))
                .or(() -> Optional.ofNullable(form.group("after")))
                .orElse("");
        return Optional.of(
                new Price(currency, new BigDecimal(form.group("amount").replace(',', '.'))));
    }
}
