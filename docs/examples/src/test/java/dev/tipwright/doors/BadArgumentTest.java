package dev.tipwright.doors;

import static org.assertj.core.api.Assertions.assertThat;

import dev.tipwright.core.quantity.Angle;
import dev.tipwright.core.quantity.FirstMoment;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import java.lang.invoke.MethodType;
import java.lang.reflect.Array;
import java.lang.reflect.Constructor;
import java.lang.reflect.Executable;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.Parameter;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Every door of the public API, tried with one bad argument at a time: null, NaN, infinities, zero, negative, extreme, empty. A call
 * passes only if it throws a {@link NullPointerException}, an {@link IllegalArgumentException} or an {@link ArithmeticException}
 * whose message has the name of the argument, or if it gives a value that is finite throughout.
 */
class BadArgumentTest {

    /** Doors that may behave otherwise, each with its reason; ten lines at most. */
    private static final List<String> EXCEPTIONS = List.of(
            ".valueOf(" // made by the compiler for every enum; its message names the value, not the argument
            );

    @TestFactory
    Stream<DynamicTest> everyExportedMethod() {
        return Exported.types().stream()
                .flatMap(type -> doors(type).map(door -> DynamicTest.dynamicTest(name(door), () -> tryDoor(door))));
    }

    @Test
    void theApiIsThere() {
        assertThat(Exported.types()).hasSizeGreaterThan(80).contains(Length.class, Mass.class);
        assertThat(EXCEPTIONS).hasSizeLessThanOrEqualTo(10);
    }

    @Test
    void aValueThatHoldsNaNIsNotFinite() throws ReflectiveOperationException {
        record Holder(List<Double> numbers) {}
        assertThat(Finite.throughout(new Holder(List.of(1.0)))).isTrue();
        assertThat(Finite.throughout(new Holder(List.of(1.0, Double.NaN)))).isFalse();
        assertThat(Finite.throughout(Optional.of(Double.NEGATIVE_INFINITY))).isFalse();
    }

    private static Stream<Executable> doors(Class<?> type) {
        Stream<Executable> constructors = type.isInterface() || Modifier.isAbstract(type.getModifiers())
                ? Stream.empty()
                : Arrays.stream(type.getConstructors());
        Stream<Executable> methods = Arrays.stream(type.getMethods())
                .filter(method -> method.getDeclaringClass() == type)
                .filter(method -> !method.isSynthetic() && !method.isBridge())
                .map(method -> method);
        return Stream.concat(constructors, methods)
                .filter(door -> door.getParameterCount() > 0)
                .filter(door -> EXCEPTIONS.stream().noneMatch(name(door)::contains))
                .sorted((a, b) -> name(a).compareTo(name(b)));
    }

    private static String name(Executable door) {
        List<String> types = Arrays.stream(door.getParameterTypes())
                .map(Class::getSimpleName)
                .toList();
        String simple = door instanceof Constructor ? "new" : door.getName();
        return door.getDeclaringClass().getName() + "." + simple
                + types.toString().replace('[', '(').replace(']', ')');
    }

    private static void tryDoor(Executable door) throws ReflectiveOperationException {
        Parameter[] parameters = door.getParameters();
        TreeSet<String> faults = new TreeSet<>();
        Object[] allGood = new Object[parameters.length];
        for (int i = 0; i < allGood.length; i++) {
            allGood[i] = good(door.getGenericParameterTypes()[i], door, parameters[i]);
        }
        fault(door, allGood, "nothing bad").ifPresent(fault -> faults.add("all good: " + fault));
        for (int bad = 0; bad < parameters.length; bad++) {
            for (Object value : badValues(door.getGenericParameterTypes()[bad], parameters[bad].getType())) {
                Object[] arguments = new Object[parameters.length];
                for (int i = 0; i < arguments.length; i++) {
                    arguments[i] = i == bad ? value : allGood[i];
                }
                fault(door, arguments, parameters[bad].getName())
                        .ifPresent(fault -> faults.add(show(value) + ": " + fault));
            }
        }
        assertThat(faults).as(name(door)).isEmpty();
    }

    private static Optional<String> fault(Executable door, Object[] arguments, String name)
            throws ReflectiveOperationException {
        try {
            Object result = call(door, arguments);
            return Finite.throughout(result) ? Optional.empty() : Optional.of(name + " gave " + result);
        } catch (InvocationTargetException e) {
            Throwable thrown = e.getCause();
            if (thrown instanceof IndexOutOfBoundsException) {
                return Optional.empty(); // a list says so in the words of the JDK
            }
            boolean allowed = thrown instanceof NullPointerException
                    || thrown instanceof IllegalArgumentException
                    || thrown instanceof ArithmeticException;
            boolean named = thrown.getMessage() != null && thrown.getMessage().contains(name);
            return allowed && named ? Optional.empty() : Optional.of(name + " threw " + thrown);
        }
    }

    private static Object call(Executable door, Object[] arguments) throws ReflectiveOperationException {
        if (door instanceof Constructor<?> constructor) {
            return constructor.newInstance(arguments);
        }
        Method method = (Method) door;
        Object target = Modifier.isStatic(method.getModifiers()) ? null : receiver(method.getDeclaringClass());
        return method.invoke(target, arguments);
    }

    private static Object receiver(Class<?> type) {
        return type.isEnum() ? type.getEnumConstants()[0] : good(type);
    }

    private static Object good(Type type) {
        if (type instanceof Class<?> c && c.isEnum()) {
            return c.getEnumConstants()[0];
        }
        return Samples.of(type)
                .orElseThrow(() -> new AssertionError("the registry of samples has none of " + type.getTypeName()));
    }

    private static Object good(Type type, Executable door, Parameter parameter) {
        return Samples.byName(door, parameter.getName())
                .filter(MethodType.methodType(parameter.getType()).wrap().returnType()::isInstance)
                .orElseGet(() -> good(type));
    }

    private static List<Object> badValues(Type generic, Class<?> type) {
        List<Object> values = new ArrayList<>();
        if (!type.isPrimitive()) {
            values.add(null);
        }
        if (type == double.class) {
            values.addAll(List.of(
                    Double.NaN,
                    Double.POSITIVE_INFINITY,
                    Double.NEGATIVE_INFINITY,
                    0.0,
                    -0.0,
                    -1.0,
                    Double.MAX_VALUE,
                    -Double.MAX_VALUE,
                    Double.MIN_VALUE));
        } else if (type == long.class) {
            values.addAll(List.of(0L, -1L, Long.MAX_VALUE, Long.MIN_VALUE));
        } else if (type == int.class) {
            values.addAll(List.of(0, -1, Integer.MAX_VALUE, Integer.MIN_VALUE));
        } else if (type == String.class) {
            values.addAll(List.of("", " ", "\u0000", "x".repeat(10_000), "1/0 in", "-", "{", "1e999 mm"));
        } else if (type == Length.class) {
            values.addAll(Stream.of(0L, 1L, -1L, Long.MAX_VALUE, Long.MIN_VALUE)
                    .map(Length::ofNanometres)
                    .toList());
        } else if (type == Mass.class) {
            values.addAll(Stream.of(0L, 1L, -1L, Long.MAX_VALUE, Long.MIN_VALUE)
                    .map(Mass::ofPicograms)
                    .toList());
        } else if (type == Angle.class) {
            values.addAll(Stream.of(0.0, -1.0, 90.0, 180.0, 1e300, -1e300)
                    .map(Angle::ofDegrees)
                    .toList());
        } else if (type == FirstMoment.class) {
            values.addAll(Stream.of(0.0, -1.0, 1e-300, 1e300)
                    .map(FirstMoment::ofGramMillimetres)
                    .toList());
        } else if (List.class.isAssignableFrom(type)) {
            values.add(List.of());
            values.add(Collections.singletonList(null));
            twice(generic).ifPresent(values::add);
        } else if (type.isArray()) {
            values.add(Array.newInstance(type.getComponentType(), 0));
            values.add(Array.newInstance(type.getComponentType(), 1));
        } else if (type == Optional.class) {
            values.add(Optional.empty());
        }
        return values;
    }

    /** A good list said twice over: doubled labels, places out of order. */
    private static Optional<Object> twice(Type generic) {
        return Samples.of(generic).map(list -> {
            List<Object> doubled = new ArrayList<>((List<?>) list);
            doubled.addAll((List<?>) list);
            return doubled;
        });
    }

    private static String show(Object value) {
        String text = String.valueOf(value);
        return (value == null
                        ? "null"
                        : value.getClass().getSimpleName() + " " + text.substring(0, Math.min(40, text.length())))
                .toLowerCase(Locale.ROOT);
    }

    /** Whether a value holds neither NaN nor an infinity anywhere. */
    private static final class Finite {

        private Finite() {}

        static boolean throughout(Object value) throws ReflectiveOperationException {
            if (value instanceof Double number) {
                return Double.isFinite(number);
            }
            if (value instanceof Optional<?> optional) {
                return optional.isEmpty() || throughout(optional.get());
            }
            if (value instanceof List<?> list) {
                for (Object element : list) {
                    if (!throughout(element)) {
                        return false;
                    }
                }
                return true;
            }
            if (value instanceof Record record) {
                for (RecordComponent component : record.getClass().getRecordComponents()) {
                    Method accessor = component.getAccessor();
                    accessor.setAccessible(true);
                    if (!throughout(accessor.invoke(record))) {
                        return false;
                    }
                }
                return true;
            }
            return value == null || !value.toString().matches(".*\\b(NaN|Infinity)\\b.*");
        }
    }
}
