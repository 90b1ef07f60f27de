/* SPDX-License-Identifier: MIT */
/* Many threads run every check value at once, each beginning elsewhere, and must
 * find bit by bit what one thread alone finds. Also built under ThreadSanitizer. */
#include "../rows/rows.h"

#include <pthread.h>
#include <stdatomic.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

enum { THREADS = 4 };

static rows all;
static call *alone;
static atomic_int differing;

static int same(const call *a, const call *b)
{
  if (a->status != b->status) return 0;
  for (size_t i = 0; i < freeair_function_parameter_count(a->f); i++) {
    const freeair_parameter *p = freeair_function_parameter(a->f, i);
    if (!(p->flags & FREEAIR_PARAMETER_OUTPUT) || a->args[i] == NULL) continue;
    if (memcmp(a->args[i], b->args[i], a->count[i] * p->size) != 0) return 0;
  }
  return 1;
}

static void *run_all(void *first)
{
  for (size_t k = 0; k < all.n; k++) {
    size_t i = (*(const size_t *)first + k) % all.n;
    call c = call_of_row(&all.row[i]);
    call_run(&c);
    if (!same(&c, &alone[i])) {
      atomic_fetch_add(&differing, 1);
      fprintf(stderr, "%s: %s differs among threads\n", all.row[i].place, all.row[i].cell[ROW_FUNCTION]);
    }
    call_free(&c);
  }
  return NULL;
}

int main(void)
{
  const char *folder = getenv("FREEAIR_TEST_DATA");
  all = rows_read(folder != NULL ? folder : "tests/data");
  alone = calloc(all.n, sizeof *alone);
  if (alone == NULL || all.n == 0) return 99;
  for (size_t i = 0; i < all.n; i++) {
    alone[i] = call_of_row(&all.row[i]);
    if (alone[i].error[0] != '\0') {
      fprintf(stderr, "%s: %s\n", all.row[i].place, alone[i].error);
      return EXIT_FAILURE;
    }
    call_run(&alone[i]);
  }
  pthread_t thread[THREADS];
  size_t first[THREADS];
  for (size_t t = 0; t < THREADS; t++) {
    first[t] = t * all.n / THREADS;
    if (pthread_create(&thread[t], NULL, run_all, &first[t]) != 0) return 99;
  }
  for (size_t t = 0; t < THREADS; t++) pthread_join(thread[t], NULL);
  printf("%d threads ran %zu rows each; %d calls differ\n", THREADS, all.n, atomic_load(&differing));
  for (size_t i = 0; i < all.n; i++) call_free(&alone[i]);
  free(alone);
  rows_free(&all);
  return atomic_load(&differing) == 0 ? EXIT_SUCCESS : EXIT_FAILURE;
}
