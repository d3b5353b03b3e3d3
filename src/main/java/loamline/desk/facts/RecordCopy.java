package loamline.desk.facts;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;

/** Records by the names of their components: what stands there, and a copy with one of them changed. */
final class RecordCopy {
    private RecordCopy() {}

    /** @throws IllegalArgumentException if the record has no component of that name */
    static RecordComponent component(Record record, String name) {
        return Arrays.stream(record.getClass().getRecordComponents())
                .filter(component -> component.getName().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(record.getClass() + " has no component " + name));
    }

    static Object get(Record record, RecordComponent component) {
        try {
            return component.getAccessor().invoke(record);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }

    /** What the record's own constructor makes of the same components but one. */
    static Record with(Record record, String name, Object value) {
        RecordComponent[] components = record.getClass().getRecordComponents();
        Object[] values = Arrays.stream(components)
                .map(component -> component.getName().equals(name) ? value : get(record, component))
                .toArray();
        try {
            Constructor<? extends Record> constructor = record.getClass()
                    .getDeclaredConstructor(Arrays.stream(components)
                            .map(RecordComponent::getType)
                            .toArray(Class<?>[]::new));
            return constructor.newInstance(values);
        } catch (InvocationTargetException e) {
            throw new IllegalArgumentException(name + " cannot be " + value, e.getCause());
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }
}
