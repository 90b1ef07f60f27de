/* SPDX-License-Identifier: MIT */
/* How fast the operating point is, as ratios on one run: against SUNDIALS CVODE
 * on the same equations, revolution after revolution until they repeat, both at
 * about the same accuracy; and a pump-up curve against real time. */
#include <cvode/cvode.h>

#include "../reference/crank_reference.h"

#include <freeair/cycle.h>
#include <freeair/fault.h>
#include <freeair/prediction.h>

#include <time.h>

static double now(void)
{
  struct timespec t;
  clock_gettime(CLOCK_MONOTONIC, &t);
  return (double)t.tv_sec + 1e-9 * (double)t.tv_nsec;
}

enum { MOST = 300 }; /* revolutions until CVODE's own noise is taken to keep it from settling */

static int ascending(const void *a, const void *b)
{
  double x = *(const double *)a;
  double y = *(const double *)b;
  return x < y ? -1 : x > y;
}

typedef struct contest {
  const char *name;
  int32_t fault;
  double severity;
  double receiver;
} contest;

static const contest contests[] = {
    {"sound", FREEAIR_FAULT_NONE, 0.0, 9e5},
    {"first suction valve leaks", FREEAIR_FAULT_LP_SUCTION_VALVE, 0.3, 9e5},
    {"first suction valve stuck", FREEAIR_FAULT_LP_SUCTION_VALVE, 1.0, 6e5},
    {"second suction valve stuck", FREEAIR_FAULT_HP_SUCTION_VALVE, 1.0, 5e5},
};

static crank_answer by_cvode(const freeair_machine *m, double receiver, double tolerance, double small, double *seconds,
                             long *evaluations)
{
  crank c;
  crank_integrator g;
  crank_answer a = {0};
  double start = now();
  crank_setup(&c, m, 101325.0, 293.15, receiver);
  crank_begin(&c, &g, tolerance);
  crank_solve(&c, &g, small, MOST, &a);
  crank_end(&g);
  *seconds = now() - start;
  *evaluations = c.evaluations;
  return a;
}

static void compete(const contest *q)
{
  freeair_machine m = FREEAIR_MACHINE_INIT;
  freeair_machine_site site = FREEAIR_MACHINE_SITE_INIT;
  m.lp_bore_m = 0.12;
  m.lp_stroke_m = 0.09;
  m.speed_rev_s = 14.0;
  freeair_fault_apply(&m, &site, q->fault, q->severity, &m, &site);
  double displacement;
  freeair_machine_displacement(&m, &displacement);

  enum { runs = 101 };
  double times[runs];
  freeair_cycle_result r = FREEAIR_CYCLE_RESULT_INIT;
  for (int i = 0; i < runs; i++) {
    double start = now();
    freeair_cycle_point(&m, &site, q->receiver, NAN, 1e-3, &r);
    times[i] = now() - start;
  }
  qsort(times, runs, sizeof times[0], ascending);
  double ours = times[runs / 2];

  double seconds;
  long evaluations;
  crank_answer exact = by_cvode(&m, q->receiver, 1e-9, 1e-8, &seconds, &evaluations);
  double our_error = fabs(r.delivery_m3_s - exact.delivery_m3_s) / displacement;
  printf("%s: %.3f ms, error %.1e, %d revolutions, %.0f evaluations each, %.2f us an evaluation\n", q->name,
         1e3 * ours, our_error, (int)r.revolutions, (double)r.evaluations / r.revolutions,
         1e6 * ours / r.evaluations);
  /* the fastest tolerances that keep 0.1 % as the library does */
  static const double tolerances[] = {1e-3, 3e-4, 1e-4, 3e-5, 1e-5};
  static const double ends[] = {1e-3, 3e-4, 1e-4};
  double best = INFINITY;
  double best_revolution = NAN;
  for (size_t i = 0; i < sizeof tolerances / sizeof tolerances[0]; i++)
    for (size_t j = 0; j < sizeof ends / sizeof ends[0]; j++) {
      crank_answer a = by_cvode(&m, q->receiver, tolerances[i], ends[j], &seconds, &evaluations);
      double error = fabs(a.delivery_m3_s - exact.delivery_m3_s) / displacement;
      if (a.revolutions >= MOST || error > 1e-3 || seconds >= best) continue;
      best = seconds;
      best_revolution = seconds / a.revolutions;
      printf("  CVODE at %.0e, changes below %.0e: %.1f ms, error %.1e, %d revolutions, %.0f evaluations each\n",
             tolerances[i], ends[j], 1e3 * seconds, error, a.revolutions, (double)evaluations / a.revolutions);
    }
  printf("  ratio %.0f; a revolution alone %.1f\n", best / ours, best_revolution / (ours / r.revolutions));
}

int main(void)
{
  for (size_t i = 0; i < sizeof contests / sizeof contests[0]; i++) compete(&contests[i]);

  freeair_machine m = FREEAIR_MACHINE_INIT;
  freeair_machine_site site = FREEAIR_MACHINE_SITE_INIT;
  m.lp_bore_m = 0.12;
  m.lp_stroke_m = 0.09;
  m.speed_rev_s = 11.0;
  m.receiver_m3 = 0.3;
  freeair_prediction_run run = FREEAIR_PREDICTION_RUN_INIT;
  for (run.nodes = 5; run.nodes <= 7; run.nodes += 2) {
    freeair_prediction_result r = FREEAIR_PREDICTION_RESULT_INIT;
    double curve[4][101];
    enum { runs = 31 };
    double times[runs];
    for (int i = 0; i < runs; i++) {
      double start = now();
      freeair_prediction_pumpup(&m, &site, &run, &r, curve[0], curve[1], curve[2], curve[3], 101);
      times[i] = now() - start;
    }
    qsort(times, runs, sizeof times[0], ascending);
    printf("pump-up of %.0f s from %d operating points: %.2f ms, %.0f times real time, %d evaluations\n", r.time_s,
           (int)run.nodes, 1e3 * times[runs / 2], r.time_s / times[runs / 2], (int)r.evaluations);
  }
  return 0;
}
