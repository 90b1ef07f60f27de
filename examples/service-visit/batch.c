/* SPDX-License-Identifier: MIT */
#include "batch.h"
#include "show.h"

#include <pthread.h>
#include <stdatomic.h>
#include <stdio.h>
#include <stdlib.h>

enum { MOST_THREADS = 64 };

/* One visit, what became of it, and all the memory that takes. */
typedef struct job {
  visit v;
  assessment a;
  int ok;
  const char *message;
} job;

typedef struct batch {
  char *const *paths;
  job *jobs;
  int n;
  atomic_int next;
} batch;

static void *work(void *shared)
{
  batch *b = shared;
  for (int i; (i = atomic_fetch_add(&b->next, 1)) < b->n;) {
    job *j = &b->jobs[i];
    j->ok = visit_read(&j->v, b->paths[i]);
    j->message = j->v.message;
    if (!j->ok) continue;
    j->ok = assess(&j->a, &j->v);
    j->message = j->a.message;
  }
  return NULL;
}

static void print_line(const job *j)
{
  const assessment *a = &j->a;
  char t[SHOWN];
  const char *says = a->summary.verdict == FREEAIR_VERDICT_MEETS   ? "sound"
                     : a->summary.verdict == FREEAIR_VERDICT_FAILS ? "NOT SOUND"
                                                                   : "cannot tell";
  printf("%-12s %-10s %-42s", says, show_probability(a->cause[0].probability, t),
         freeair_evidence_title(FREEAIR_EVIDENCE_KIND_CAUSE, a->cause[0].cause));
  printf(" next: %-22s %s\n",
         a->n_checks > 0 ? freeair_evidence_title(FREEAIR_EVIDENCE_KIND_CHECK, a->check[0].check) : "nothing",
         j->v.title);
}

int batch_run(char *const *paths, int n, int threads)
{
  pthread_t thread[MOST_THREADS];
  batch b = {.paths = paths, .n = n, .jobs = calloc((size_t)n, sizeof(job))};
  if (b.jobs == NULL) return -1;
  if (threads > n) threads = n;
  if (threads > MOST_THREADS) threads = MOST_THREADS;
  int started = 0;
  /* this thread is one of them, and does it all where no other can be had */
  while (started < threads - 1 && pthread_create(&thread[started], NULL, work, &b) == 0) started++;
  work(&b);
  for (int t = 0; t < started; t++) pthread_join(thread[t], NULL);
  int refused = 0;
  for (int i = 0; i < n; i++) {
    job *j = &b.jobs[i];
    if (j->ok) {
      print_line(j);
    } else {
      fprintf(stderr, "service-visit: %s\n", j->message);
      refused++;
    }
    assessment_free(&j->a);
  }
  free(b.jobs);
  return refused;
}
