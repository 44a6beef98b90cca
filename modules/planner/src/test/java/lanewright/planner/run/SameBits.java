package lanewright.planner.run;

import java.lang.reflect.Array;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Walks two values side by side, through all fields of all classes of this project and the
 * collections between them, and finds the first place where they are not the same to the last bit.
 * It asks no class for its own idea of equality, so that what an {@code equals} leaves out is seen.
 */
final class SameBits {

    private static final Map<Class<?>, List<Field>> FIELDS = new ConcurrentHashMap<>();

    /** What is still to be compared: first, second, and where they stand. */
    private final Deque<Object[]> waiting = new ArrayDeque<>();

    private final IdentityHashMap<Object, Object> seen = new IdentityHashMap<>();
    private long doubles;

    private SameBits() {}

    /** Where the two differ, or null if they are the same. */
    static String difference(Object first, Object second) {
        return new SameBits().walk(first, second);
    }

    /** How many doubles a value holds that the walk compares. */
    static long doubles(Object value) {
        var walk = new SameBits();
        String none = walk.walk(value, value, false);
        if (none != null) {
            throw new IllegalStateException(none);
        }
        return walk.doubles;
    }

    private String walk(Object first, Object second) {
        return walk(first, second, true);
    }

    private String walk(Object first, Object second, boolean skipSame) {
        waiting.push(new Object[] {first, second, "it"});
        while (!waiting.isEmpty()) {
            Object[] next = waiting.pop();
            String found = compare(next[0], next[1], (String) next[2], skipSame);
            if (found != null) {
                return found;
            }
        }
        return null;
    }

    private String compare(Object a, Object b, String where, boolean skipSame) {
        if (a == null || b == null) {
            return a == b ? null : where + ": " + a + " and " + b;
        }
        if (skipSame && a == b) {
            return null;
        }
        if (a.getClass() != b.getClass() && !(a instanceof Collection) && !(a instanceof Map)) {
            return where + ": a " + a.getClass() + " and a " + b.getClass();
        }
        if (a instanceof Double x) {
            doubles++;
            return same(x, (Double) b) ? null : where + ": " + a + " and " + b;
        }
        if (a instanceof double[] x) {
            double[] y = (double[]) b;
            doubles += x.length;
            for (int i = 0; i < Math.min(x.length, y.length); i++) {
                if (!same(x[i], y[i])) {
                    return where + "[" + i + "]: " + x[i] + " and " + y[i];
                }
            }
            return x.length == y.length ? null : where + ": lengths differ";
        }
        if (a instanceof Collection<?> x) {
            return b instanceof Collection<?> y ? all(x, y, where) : where + ": kinds differ";
        }
        if (a instanceof Map<?, ?> x) {
            if (!(b instanceof Map<?, ?> y)) {
                return where + ": kinds differ";
            }
            String keys = all(x.keySet(), y.keySet(), where + " keys");
            return keys != null ? keys : all(x.values(), y.values(), where + " values");
        }
        if (a.getClass().isArray()) {
            return arrays(a, b, where);
        }
        if (a instanceof Enum<?>
                || a instanceof Path
                || !a.getClass().getName().startsWith("lanewright.")) {
            return a.equals(b) ? null : where + ": " + a + " and " + b;
        }
        if (a.getClass().isHidden() || a.getClass().isSynthetic()) {
            return null; // a function: it holds no figure that its owner does not hold
        }
        if (seen.put(a, b) == b) {
            return null;
        }
        return fields(a, b, where);
    }

    private static boolean same(double a, double b) {
        return Double.doubleToRawLongBits(a) == Double.doubleToRawLongBits(b);
    }

    private String all(Collection<?> a, Collection<?> b, String where) {
        if (a.size() != b.size()) {
            return where + ": " + a.size() + " and " + b.size() + " of them";
        }
        if (a instanceof Set<?> x && b instanceof Set<?> y) {
            return x.equals(y) ? null : where + ": " + a + " and " + b;
        }
        List<?> ours = new ArrayList<>(a);
        List<?> theirs = new ArrayList<>(b);
        for (int i = ours.size() - 1; i >= 0; i--) {
            waiting.push(new Object[] {ours.get(i), theirs.get(i), where + "[" + i + "]"});
        }
        return null;
    }

    private String arrays(Object a, Object b, String where) {
        int n = Array.getLength(a);
        if (n != Array.getLength(b)) {
            return where + ": lengths differ";
        }
        if (a instanceof int[] x) {
            return Arrays.equals(x, (int[]) b) ? null : where + ": numbers differ";
        }
        for (int i = 0; i < n; i++) {
            waiting.push(new Object[] {Array.get(a, i), Array.get(b, i), where + "[" + i + "]"});
        }
        return null;
    }

    private String fields(Object a, Object b, String where) {
        try {
            for (Field field : FIELDS.computeIfAbsent(a.getClass(), SameBits::fieldsOf)) {
                if (field.getType() == double.class) {
                    doubles++;
                    double x = field.getDouble(a);
                    double y = field.getDouble(b);
                    if (!same(x, y)) {
                        return where + "." + field.getName() + ": " + x + " and " + y;
                    }
                } else if (field.getType() == int.class) {
                    if (field.getInt(a) != field.getInt(b)) {
                        return where + "." + field.getName() + ": whole numbers differ";
                    }
                } else {
                    Object x = field.get(a);
                    Object y = field.get(b);
                    if (x != y || x != null) {
                        waiting.push(new Object[] {x, y, where + "." + field.getName()});
                    }
                }
            }
            return null;
        } catch (IllegalAccessException e) {
            throw new IllegalStateException(e);
        }
    }

    private static List<Field> fieldsOf(Class<?> type) {
        List<Field> fields = new ArrayList<>();
        for (Class<?> each = type; each != Object.class && each != Record.class; ) {
            for (Field field : each.getDeclaredFields()) {
                if (!Modifier.isStatic(field.getModifiers()) && !remembers(field)) {
                    field.setAccessible(true);
                    fields.add(field);
                }
            }
            each = each.getSuperclass();
        }
        return fields;
    }

    /** What a class works out when it is first asked is no part of what it says. */
    private static boolean remembers(Field field) {
        return Set.of("hash", "hashCode", "worked").contains(field.getName());
    }
}
