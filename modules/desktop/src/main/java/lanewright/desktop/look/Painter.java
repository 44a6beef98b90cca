package lanewright.desktop.look;

import java.util.concurrent.PriorityBlockingQueue;
import java.util.concurrent.atomic.AtomicLong;

/**
 * Paints the boards of all windows, one after another, on a thread of its own, so that the thread
 * of the screen is free for the hand. What lies beside the hand comes after what lies under it.
 */
final class Painter {

    private record Order(boolean beside, long number, Runnable work) implements Comparable<Order> {
        @Override
        public int compareTo(Order other) {
            return beside == other.beside
                    ? Long.compare(number, other.number)
                    : Boolean.compare(beside, other.beside);
        }
    }

    private static final PriorityBlockingQueue<Order> ORDERS = new PriorityBlockingQueue<>();
    private static final AtomicLong NUMBER = new AtomicLong();

    static {
        Thread thread = new Thread(Painter::work, "lanewright-painter");
        thread.setDaemon(true);
        thread.start();
    }

    private Painter() {}

    /**
     * Has something painted.
     *
     * @param beside whether it lies beside what the hand is on
     */
    static void paint(boolean beside, Runnable work) {
        ORDERS.add(new Order(beside, NUMBER.incrementAndGet(), work));
    }

    private static void work() {
        while (true) {
            try {
                ORDERS.take().work().run();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                return;
            }
        }
    }
}
