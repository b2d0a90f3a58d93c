package org.tallywall.core.random;

/**
 * Philox 4x64 with ten rounds, written down plainly from Salmon, Moraes, Dror and Shaw, "Parallel
 * random numbers: as easy as 1, 2, 3" (SC 2011), as a second opinion on the library's. One block of
 * four numbers for each value of the counter.
 */
final class PlainPhilox {
  private static final long FIRST_MULTIPLIER = 0xD2E7470EE14C6C93L;
  private static final long SECOND_MULTIPLIER = 0xCA5A826395121157L;
  private static final long FIRST_WEYL = 0x9E3779B97F4A7C15L;
  private static final long SECOND_WEYL = 0xBB67AE8584CAA73BL;
  private static final int ROUNDS = 10;

  private PlainPhilox() {}

  /** The four numbers of a counter of four words under a key of two. */
  static long[] block(long[] key, long[] counter) {
    long[] x = counter.clone();
    long k0 = key[0];
    long k1 = key[1];
    for (int round = 0; round < ROUNDS; round++) {
      long high0 = Math.multiplyHigh(FIRST_MULTIPLIER, x[0]);
      high0 += (FIRST_MULTIPLIER >> 63 & x[0]) + (x[0] >> 63 & FIRST_MULTIPLIER);
      long high1 = Math.multiplyHigh(SECOND_MULTIPLIER, x[2]);
      high1 += (SECOND_MULTIPLIER >> 63 & x[2]) + (x[2] >> 63 & SECOND_MULTIPLIER);
      x =
          new long[] {
            high1 ^ x[1] ^ k0, SECOND_MULTIPLIER * x[2], high0 ^ x[3] ^ k1, FIRST_MULTIPLIER * x[0]
          };
      k0 += FIRST_WEYL;
      k1 += SECOND_WEYL;
    }
    return x;
  }
}
