package dev.tipwright.catalogue;

import com.sun.source.tree.BinaryTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.NewClassTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.TreeScanner;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import javax.lang.model.element.Modifier;

/** The rules that an argument can break: the words of every refusal in the three modules, and the types that refuse with them. */
final class ErrorRules {

    /** Types that nobody outside calls and that say a rule all the same, with those that are called. */
    private static final Map<String, List<String>> MET_AT = Map.of("TipStock", List.of("Balance", "RemovedMaterial"));

    private final Map<String, Set<String>> rules = new TreeMap<>();
    private final Set<String> thrown = new TreeSet<>();

    ErrorRules(Sources sources) {
        sources.units().forEach(this::read);
    }

    /** By what must hold: the types that hold to it. */
    Map<String, Set<String>> rules() {
        return rules;
    }

    /** Every type of exception that the modules make themselves. */
    Set<String> thrown() {
        return thrown;
    }

    /** What a caller can see: the type, or of a helper its package. */
    private static String name(CompilationUnitTree unit, ClassTree type) {
        boolean seen = type.getModifiers().getFlags().contains(Modifier.PUBLIC);
        return seen
                ? type.getSimpleName().toString()
                : unit.getPackageName().toString().replace("dev.tipwright.", "");
    }

    /** A text, or texts and values put together; a value shows by its name in braces. */
    private static String words(ExpressionTree expression) {
        if (expression instanceof LiteralTree literal) {
            return String.valueOf(literal.getValue());
        }
        if (expression instanceof BinaryTree sum && sum.getKind() == Tree.Kind.PLUS) {
            return words(sum.getLeftOperand()) + words(sum.getRightOperand());
        }
        String name = expression.toString().replaceAll("(?s)\\(.*", "");
        return "{" + (name.isEmpty() ? "…" : name) + "}";
    }

    private void read(CompilationUnitTree unit) {
        Deque<String> types = new ArrayDeque<>();
        new TreeScanner<Void, Void>() {
            @Override
            public Void visitClass(ClassTree type, Void nothing) {
                types.push(name(unit, type));
                super.visitClass(type, null);
                types.pop();
                return null;
            }

            @Override
            public Void visitMethodInvocation(MethodInvocationTree call, Void nothing) {
                String method = call.getMethodSelect().toString();
                switch (method.substring(method.lastIndexOf('.') + 1)) {
                    case "positive" -> rule("must be above zero");
                    case "notNegative", "atLeastZero" -> rule("must not be negative");
                    case "between", "within", "someUpTo" -> rule("must be from the least to the most it may be");
                    case "atMost" -> rule("must be at most another argument");
                    case "given" -> rule("must be given");
                    case "label" -> rule("must be a label: not blank, at most 80 characters, no control characters");
                    case "someOf" -> rule("must hold at least one");
                    case "distinct" -> rule("must name each only once");
                    default -> {}
                }
                return super.visitMethodInvocation(call, null);
            }

            @Override
            public Void visitBinary(BinaryTree sum, Void nothing) {
                boolean text = sum.getKind() == Tree.Kind.PLUS && words(sum).contains("must ");
                if (text) {
                    ruleIn(words(sum));
                }
                return text ? null : super.visitBinary(sum, null);
            }

            @Override
            public Void visitLiteral(LiteralTree literal, Void nothing) {
                ruleIn(words(literal));
                return null;
            }

            /** A rule, if the words have one: up to the value that broke it. */
            private void ruleIn(String text) {
                int must = text.indexOf("must ");
                boolean whole = must == 0 || (must > 0 && text.charAt(must - 1) == ' ');
                if (whole && !types.isEmpty() && !types.peekLast().endsWith("Code")) {
                    String rule = text.substring(must);
                    int end = rule.indexOf(", was");
                    rule(end < 0 ? rule : rule.substring(0, end));
                }
            }

            @Override
            public Void visitNewClass(NewClassTree made, Void nothing) {
                String type = made.getIdentifier().toString();
                if (type.endsWith("Exception")) {
                    thrown.add(type);
                }
                return super.visitNewClass(made, null);
            }

            private void rule(String rule) {
                boolean internal = unit.getPackageName().toString().contains(".internal.");
                if (!types.isEmpty()) {
                    String type = types.peekLast();
                    List<String> met = internal ? MET_AT.getOrDefault(type, List.of()) : List.of(type);
                    met.forEach(at -> rules.computeIfAbsent(rule.strip(), key -> new TreeSet<>())
                            .add(at));
                }
            }
        }.scan(unit, null);
    }
}
