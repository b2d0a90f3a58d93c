/* The scan of a card in plain C, as a yardstick: reads the rows and racks that the benchmarks
 * write, and prints the nanoseconds of one scan of the whole card and a sum for comparison.
 *
 *   gcc -O3 -march=native -o scan scan.c && ./scan rows.bin
 */
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <time.h>

#define WINDOWS 31
#define WINDOW_NS 50000000.0

static uint64_t *rows[6];
static size_t hands, racks;
static uint64_t *rack;

static double now(void) {
  struct timespec t;
  clock_gettime(CLOCK_MONOTONIC, &t);
  return t.tv_sec * 1e9 + t.tv_nsec;
}

static int64_t least(const uint64_t *held) {
  const uint64_t *restrict n0 = rows[0], *restrict n1 = rows[1], *restrict n2 = rows[2];
  const uint64_t *restrict s0 = rows[3], *restrict s1 = rows[4], *restrict s2 = rows[5];
  uint64_t a = held[0], b = held[1], c = held[2];
  int64_t enough = 14 - (int64_t)held[3], best = 99;
  for (size_t i = 0; i < hands; i++) {
    int64_t lacking = enough - (int64_t)(__builtin_popcountll(n0[i] & a) + __builtin_popcountll(n1[i] & b) +
                                __builtin_popcountll(n2[i] & c));
    int64_t missing = __builtin_popcountll(s0[i] & ~a) + __builtin_popcountll(s1[i] & ~b) +
                      __builtin_popcountll(s2[i] & ~c);
    int64_t away = lacking > missing ? lacking : missing;
    best = away < best ? away : best;
  }
  return best;
}

static int ascending(const void *x, const void *y) {
  double a = *(const double *)x, b = *(const double *)y;
  return (a > b) - (a < b);
}

static int load(const char *file) {
  FILE *in = fopen(file, "rb");
  uint64_t counts[2], word[6];
  if (!in || fread(counts, 8, 2, in) != 2) return 0;
  hands = counts[0];
  racks = counts[1];
  for (int w = 0; w < 6; w++) rows[w] = aligned_alloc(64, (hands * 8 + 63) / 64 * 64);
  rack = malloc(racks * 4 * 8);
  for (size_t i = 0; i < hands; i++) {
    if (fread(word, 8, 6, in) != 6) return 0;
    for (int w = 0; w < 6; w++) rows[w][i] = word[w];
  }
  return fread(rack, 8, racks * 4, in) == racks * 4;
}

int main(int argc, char **argv) {
  if (argc != 2 || !load(argv[1])) {
    fprintf(stderr, "usage: scan ROWS\n");
    return 2;
  }
  int64_t sum = 0;
  for (size_t r = 0; r < racks; r++) sum += least(rack + 4 * r);
  double medians[WINDOWS];
  volatile int64_t sink = 0;
  for (int w = 0; w < WINDOWS; w++) {
    double start = now(), end = start;
    size_t scans = 0;
    while (end - start < WINDOW_NS) {
      for (size_t r = 0; r < racks; r++) sink += least(rack + 4 * r);
      scans += racks;
      end = now();
    }
    medians[w] = (end - start) / scans;
  }
  qsort(medians, WINDOWS, sizeof *medians, ascending);
  printf("%zu hands, sum of the distances of %zu racks %ld: %.1f ns a scan (median of %d; best %.1f)\n",
         hands, racks, (long)sum, medians[WINDOWS / 2], WINDOWS, medians[0]);
  return 0;
}
