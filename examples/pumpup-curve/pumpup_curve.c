/* SPDX-License-Identifier: MIT */
/* The pump-up curve of a sound machine beside that of the same machine with a
 * fault, or several one by one: as CSV and as a picture.
 *
 * Introduces: freeair_fault_apply, freeair_prediction_pumpup.
 */
#include "../common/plant.h"

#include <freeair/freeair.h>

#include <math.h>
#include <stdlib.h>
#include <string.h>

enum { POINTS = 61, USAGE = 2 };

typedef struct curve {
  char name[96];
  double t_s[POINTS];
  double p_pa[POINTS];
  double gas_k[POINTS];
  double delivery_m3_s[POINTS];
  freeair_prediction_result result;
} curve;

static int32_t predict(const plant *p, int32_t fault, double severity, curve *c)
{
  freeair_machine machine = FREEAIR_MACHINE_INIT;
  freeair_machine_site site = FREEAIR_MACHINE_SITE_INIT;
  freeair_prediction_run run = FREEAIR_PREDICTION_RUN_INIT;
  c->result = (freeair_prediction_result)FREEAIR_PREDICTION_RESULT_INIT;
  run.most_s = 1800.0;
  if (fault == FREEAIR_FAULT_NONE) snprintf(c->name, sizeof c->name, "sound");
  else snprintf(c->name, sizeof c->name, "%s, severity %g", freeair_fault_name(fault), severity);
  int32_t status = freeair_fault_apply(&p->machine, &p->site, fault, severity, &machine, &site);
  if (status < 0) return status;
  return freeair_prediction_pumpup(&machine, &site, &run, &c->result, c->t_s, c->p_pa, c->gas_k, c->delivery_m3_s,
                                   POINTS);
}

static void write_csv(FILE *out, const curve *c, size_t n)
{
  fprintf(out, "case,t_s,p_pa,gas_k,delivery_m3_s\n");
  for (size_t i = 0; i < n; i++)
    for (int k = 0; k < POINTS; k++)
      fprintf(out, "\"%s\",%.6g,%.8g,%.6g,%.6g\n", c[i].name, c[i].t_s[k], c[i].p_pa[k], c[i].gas_k[k],
              c[i].delivery_m3_s[k]);
}

static int draw(const char *svg, const curve *c, size_t n)
{
  FILE *plot = plant_gnuplot(svg, 800, 500);
  if (plot == NULL) return 0;
  for (size_t i = 0; i < n; i++) {
    fprintf(plot, "$curve%zu << EOD\n", i);
    for (int k = 0; k < POINTS; k++) fprintf(plot, "%.5g %.6g\n", c[i].t_s[k] / 60.0, c[i].p_pa[k] / 1e5);
    fprintf(plot, "EOD\n");
  }
  fprintf(plot, "set xlabel 'time, min'\nset ylabel 'receiver, bar absolute'\nset key bottom right\nplot ");
  for (size_t i = 0; i < n; i++)
    fprintf(plot, "%s$curve%zu using 1:2 linewidth 2 title '%s'", i == 0 ? "" : ", ", i, c[i].name);
  fprintf(plot, "\n");
  return plant_gnuplot_end(plot);
}

static int complain(const char *what)
{
  fprintf(stderr, "pumpup-curve: %s\n", what);
  return USAGE;
}

int main(int argc, char **argv)
{
  plant p;
  char why[200];
  const char *svg = NULL;
  const char *csv = NULL;
  plant_demonstration(&p);
  for (int i = 1; i < argc; i++) {
    if (strcmp(argv[i], "--help") == 0) {
      printf("pumpup-curve [--csv FILE] [--svg FILE] [SETTINGS]\n%s\n", plant_help);
      return 0;
    }
    if (strcmp(argv[i], "--svg") == 0 && i + 1 < argc) svg = argv[++i];
    else if (strcmp(argv[i], "--csv") == 0 && i + 1 < argc) csv = argv[++i];
    else if (!plant_set(&p, argv[i], why, sizeof why)) return complain(why);
  }

  static curve curves[1 + PLANT_FAULTS_MOST];
  for (size_t i = 0; i <= p.n_faults; i++) {
    int32_t fault = i == 0 ? FREEAIR_FAULT_NONE : p.fault[i - 1].fault;
    int32_t status = predict(&p, fault, i == 0 ? 0.0 : p.fault[i - 1].severity, &curves[i]);
    if (status < 0) return complain(freeair_status_text(status));
    const freeair_prediction_result *r = &curves[i].result;
    if (r->reached)
      printf("%-46s %7.1f s, of which %6.1f s from cut-in; gas %.0f degC\n", curves[i].name, r->time_s,
             r->time_s - r->cut_in_s, r->end_gas_k - 273.15);
    else
      printf("%-46s not in %.0f s: %.2f bar absolute by then\n", curves[i].name, curves[i].t_s[POINTS - 1],
             r->end_pa / 1e5);
  }
  if (csv != NULL) {
    FILE *out = fopen(csv, "w");
    if (out == NULL) return complain("cannot write the CSV file");
    write_csv(out, curves, p.n_faults + 1);
    if (fclose(out) != 0) return complain("cannot write the CSV file");
  }
  if (svg != NULL && !draw(svg, curves, p.n_faults + 1)) return complain("gnuplot did not draw");
  printf("%s\n", freeair_caution_text(FREEAIR_CAUTION_STORED_ENERGY));
  return 0;
}
