package lanewright.sheets.set;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import lanewright.measure.UnitSystem;
import lanewright.sheets.drawing.Drawing;
import lanewright.sheets.paint.PdfBook;
import lanewright.sheets.paint.PngPicture;
import lanewright.sheets.paint.SvgPicture;

/** Makes the toy set in all formats and prints what the bytes add up to. */
public final class SetPrinter {

    private SetPrinter() {}

    /** The argument says how many threads make the set at once; each must come to the same. */
    public static void main(String[] args) throws Exception {
        int threads = Integer.parseInt(args[0]);
        var pool = Executors.newFixedThreadPool(threads);
        try {
            var tasks = new ArrayList<Callable<String>>();
            for (int i = 0; i < threads; i++) {
                tasks.add(SetPrinter::digest);
            }
            for (Future<String> each : pool.invokeAll(tasks)) {
                System.out.println(each.get());
            }
        } finally {
            pool.shutdown();
        }
    }

    static byte[] pdf(List<PdfBook.Leaf> leaves) throws IOException {
        var out = new ByteArrayOutputStream();
        PdfBook.write("Marrow Fold lane", leaves, out);
        return out.toByteArray();
    }

    static String digest() throws Exception {
        List<PdfBook.Leaf> leaves = ToySet.pages(UnitSystem.US);
        Drawing map = leaves.get(3).drawing();
        return sum(pdf(leaves))
                + " "
                + sum(SvgPicture.of("map", map).getBytes(java.nio.charset.StandardCharsets.UTF_8))
                + " "
                + sum(PngPicture.of(map, 50));
    }

    private static String sum(byte[] bytes) throws NoSuchAlgorithmException {
        return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    }
}
