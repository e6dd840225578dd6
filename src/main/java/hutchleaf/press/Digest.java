package hutchleaf.press;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;

/** SHA-256 (FIPS 180-4). */
final class Digest {
    private Digest() {}

    /** Of several runs of bytes, one after another. */
    static byte[] of(byte[]... runs) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            for (byte[] run : runs) {
                digest.update(run);
            }
            return digest.digest();
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every JDK has SHA-256", e);
        }
    }
}
