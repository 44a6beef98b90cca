package lanewright.desktop.files;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;

/** Hashes that names of files are made of. */
final class Digests {

    private Digests() {}

    static byte[] sha256(byte[] of) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(of);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
