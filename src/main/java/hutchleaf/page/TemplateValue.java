package hutchleaf.page;

import freemarker.core.XMLOutputFormat;
import freemarker.template.TemplateModelException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Turns the records made for a template into maps, lists and plain values, so that a template can reach nothing else. */
final class TemplateValue {
    private TemplateValue() {}

    /** The record's components by name; an empty {@link Optional} leaves its name out. */
    static Map<String, Object> of(Record view) {
        Map<String, Object> values = new LinkedHashMap<>();
        for (RecordComponent component : view.getClass().getRecordComponents()) {
            value(read(view, component)).ifPresent(value -> values.put(component.getName(), value));
        }
        return values;
    }

    private static Optional<Object> value(Object raw) {
        if (raw instanceof Optional<?> optional) {
            return optional.flatMap(TemplateValue::value);
        } else if (raw instanceof Xml xml) {
            return Optional.of(markup(xml));
        } else if (raw instanceof Record record) {
            return Optional.of(of(record));
        } else if (raw instanceof List<?> list) {
            return Optional.of(list.stream().map(item -> value(item).orElse("")).toList());
        } else if (raw instanceof String || raw instanceof Number || raw instanceof Boolean) {
            return Optional.of(raw);
        }
        throw new IllegalArgumentException("a template can't be given a " + raw.getClass());
    }

    private static Object markup(Xml xml) {
        try {
            return XMLOutputFormat.INSTANCE.fromMarkup(xml.text());
        } catch (TemplateModelException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Object read(Record view, RecordComponent component) {
        try {
            component.getAccessor().setAccessible(true);
            return component.getAccessor().invoke(view);
        } catch (IllegalAccessException | InvocationTargetException e) {
            throw new IllegalStateException("cannot read " + component, e);
        }
    }
}
