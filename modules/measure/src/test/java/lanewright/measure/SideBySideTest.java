package lanewright.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicIntegerArray;
import org.junit.jupiter.api.Test;

/** Parts of one work done side by side. */
class SideBySideTest {

    @Test
    void everyPartIsDoneOnce() {
        for (int parts : new int[] {0, 1, 2, 3, 1000}) {
            var done = new AtomicIntegerArray(parts);
            SideBySide.each(parts, () -> done, AtomicIntegerArray::incrementAndGet);
            for (int i = 0; i < parts; i++) {
                assertEquals(1, done.get(i), "part " + i + " of " + parts);
            }
        }
    }

    @Test
    void aPartCanHavePartsOfItsOwn() {
        var sum = new AtomicInteger();
        SideBySide.each(
                8,
                () -> sum,
                (all, i) -> SideBySide.each(8, () -> all, (some, k) -> some.addAndGet(8 * i + k)));
        assertEquals(63 * 64 / 2, sum.get());
    }

    @Test
    void whatAPartThrowsComesToTheCallerAndTheRestIsLeft() {
        var begun = new AtomicInteger();
        assertThrows(
                CancellationException.class,
                () ->
                        SideBySide.each(
                                100_000,
                                () -> begun,
                                (all, i) -> {
                                    all.incrementAndGet();
                                    if (i == 5) {
                                        throw new CancellationException("cancelled");
                                    }
                                }));
        assertTrue(begun.get() < 100_000, "parts are left");
    }
}
