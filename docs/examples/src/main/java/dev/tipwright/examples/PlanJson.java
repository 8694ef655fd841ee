package dev.tipwright.examples;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import com.fasterxml.jackson.annotation.JsonValue;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.introspect.SimpleMixInResolver;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.jsontype.BasicPolymorphicTypeValidator;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import dev.tipwright.core.quantity.Length;

/** A plan, or a record of what was built, as JSON and back: quantities as printed, what may be of several kinds by its class. */
public final class PlanJson {
    private static final String OURS = "dev.tipwright.";

    private abstract static class AsText {
        @JsonCreator
        static native Object parse(String text);

        @JsonValue
        @Override
        public abstract String toString();
    }

    @JsonTypeInfo(use = JsonTypeInfo.Id.CLASS, property = "type")
    private interface OneOfSeveral {}

    private PlanJson() {}

    private static ObjectMapper mapper() {
        var onlyOurs = BasicPolymorphicTypeValidator.builder().allowIfSubType(OURS);
        ObjectMapper mapper = JsonMapper.builder()
                .addModule(new Jdk8Module())
                .disable(MapperFeature.CAN_OVERRIDE_ACCESS_MODIFIERS)
                .polymorphicTypeValidator(onlyOurs.build())
                .build();
        return mapper.setMixInResolver(new SimpleMixInResolver(null) {
            @Override
            public Class<?> findMixInClassFor(Class<?> type) {
                boolean text = type.getPackage() == Length.class.getPackage() && !type.isEnum();
                boolean several = type.isInterface() && type.getName().startsWith(OURS);
                return text ? AsText.class : several ? OneOfSeveral.class : Object.class;
            }
        });
    }

    public static String write(Object plan) throws JsonProcessingException {
        return mapper().writerWithDefaultPrettyPrinter().writeValueAsString(plan);
    }

    public static <T> T read(String json, Class<T> type) throws JsonProcessingException {
        return mapper().readValue(json, type);
    }
}
