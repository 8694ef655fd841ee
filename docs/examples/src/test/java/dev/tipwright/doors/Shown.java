package dev.tipwright.doors;

import dev.tipwright.core.evidence.Working;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.Parameter;
import java.util.Arrays;
import java.util.Comparator;

/** The working that a type shows of its sample. */
public final class Shown {

    private Shown() {}

    /** Calls its method that gives a working. */
    public static Working by(Class<?> type) throws ReflectiveOperationException {
        Method method = Arrays.stream(type.getMethods())
                .filter(candidate -> candidate.getReturnType() == Working.class)
                .min(Comparator.comparingInt(Method::getParameterCount))
                .orElseThrow(() -> new AssertionError(type.getSimpleName() + " shows no working"));
        Object[] arguments = Arrays.stream(method.getParameters())
                .map(parameter -> sample(method, parameter))
                .toArray();
        boolean alone = Modifier.isStatic(method.getModifiers());
        Object receiver = alone ? null : Samples.of(type).orElseThrow();
        return (Working) method.invoke(receiver, arguments);
    }

    private static Object sample(Method method, Parameter parameter) {
        return Samples.byName(method, parameter.getName())
                .filter(value ->
                        parameter.getType().isPrimitive() || parameter.getType().isInstance(value))
                .or(() -> Samples.of(parameter.getParameterizedType()))
                .orElseThrow();
    }
}
