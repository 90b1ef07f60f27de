/* SPDX-License-Identifier: MIT */
/* Indicator cards of both stages, of a sound machine and with each valve fault,
 * or with the faults that are asked for: as CSV and as a picture.
 *
 * Introduces: freeair_cycle_point, freeair_cycle_card.
 */
#include "../common/plant.h"

#include <freeair/freeair.h>

#include <math.h>
#include <stdlib.h>
#include <string.h>

enum { POINTS = 180, USAGE = 2 };

typedef struct card {
  char name[96];
  double v_m3[2][POINTS];
  double p_pa[2][POINTS];
  double t_k[2][POINTS];
  freeair_cycle_result point;
  int cylinders;
} card;

static int32_t take(const plant *p, double receiver_pa, int32_t fault, double severity, card *c)
{
  freeair_machine machine = FREEAIR_MACHINE_INIT;
  freeair_machine_site site = FREEAIR_MACHINE_SITE_INIT;
  c->point = (freeair_cycle_result)FREEAIR_CYCLE_RESULT_INIT;
  if (fault == FREEAIR_FAULT_NONE) snprintf(c->name, sizeof c->name, "sound");
  else snprintf(c->name, sizeof c->name, "%s, severity %g", freeair_fault_name(fault), severity);
  int32_t status = freeair_fault_apply(&p->machine, &p->site, fault, severity, &machine, &site);
  if (status >= 0) status = freeair_cycle_point(&machine, &site, receiver_pa, NAN, NAN, &c->point);
  c->cylinders = machine.stages == 2 ? 2 : 1;
  for (int i = 0; status >= 0 && i < c->cylinders; i++) {
    int32_t cylinder = i == 0 ? 0 : machine.lp_cylinders;
    status = freeair_cycle_card(&machine, &site, receiver_pa, NAN, NAN, cylinder, c->v_m3[i], c->p_pa[i], c->t_k[i],
                                POINTS);
  }
  return status;
}

static void write_csv(FILE *out, const card *c, size_t n)
{
  fprintf(out, "case,stage,angle_deg,v_m3,p_pa,t_k\n");
  for (size_t i = 0; i < n; i++)
    for (int s = 0; s < c[i].cylinders; s++)
      for (int k = 0; k < POINTS; k++)
        fprintf(out, "\"%s\",%d,%.6g,%.8g,%.8g,%.6g\n", c[i].name, s + 1, 360.0 * k / POINTS, c[i].v_m3[s][k],
                c[i].p_pa[s][k], c[i].t_k[s][k]);
}

static int draw(const char *svg, const card *c, size_t n)
{
  int stages = c[0].cylinders;
  FILE *plot = plant_gnuplot(svg, 480 * stages, 500);
  if (plot == NULL) return 0;
  for (size_t i = 0; i < n; i++)
    for (int s = 0; s < stages; s++) {
      fprintf(plot, "$card%zu_%d << EOD\n", i, s);
      for (int k = 0; k <= POINTS; k++)
        fprintf(plot, "%.5g %.5g\n", 1e3 * c[i].v_m3[s][k % POINTS], c[i].p_pa[s][k % POINTS] / 1e5);
      fprintf(plot, "EOD\n");
    }
  fprintf(plot, "set multiplot layout 1,%d\nset key top right font ',9' samplen 1\n", stages);
  for (int s = 0; s < stages; s++) {
    if (s == 1) fprintf(plot, "unset key\n"); /* the colours are those of the first stage */
    fprintf(plot, "set title '%s'\nset xlabel 'volume, L'\nset ylabel 'bar absolute'\nplot ",
            stages == 1 ? "single stage" : s == 0 ? "first stage" : "second stage");
    for (size_t i = 0; i < n; i++)
      fprintf(plot, "%s$card%zu_%d using 1:2 linewidth 2 title '%s'", i == 0 ? "" : ", ", i, s, c[i].name);
    fprintf(plot, "\n");
  }
  fprintf(plot, "unset multiplot\n");
  return plant_gnuplot_end(plot);
}

static int complain(const char *what)
{
  fprintf(stderr, "indicator-card: %s\n", what);
  return USAGE;
}

/* Every valve of the machine, each leaking by an eighth of its area or so. */
static void each_valve(plant *p)
{
  int32_t last = p->machine.stages == 2 ? FREEAIR_FAULT_HP_DISCHARGE_VALVE : FREEAIR_FAULT_LP_DISCHARGE_VALVE;
  for (int32_t fault = FREEAIR_FAULT_LP_SUCTION_VALVE; fault <= last; fault++)
    p->fault[p->n_faults++] = (plant_fault){fault, 0.35};
}

int main(int argc, char **argv)
{
  plant p;
  char why[200];
  const char *svg = NULL;
  const char *csv = NULL;
  double receiver_pa = 9e5;
  plant_demonstration(&p);
  for (int i = 1; i < argc; i++) {
    if (strcmp(argv[i], "--help") == 0) {
      printf("indicator-card [--csv FILE] [--svg FILE] [--receiver BAR_ABSOLUTE] [SETTINGS]\n%s\n", plant_help);
      return 0;
    }
    if (strcmp(argv[i], "--svg") == 0 && i + 1 < argc) svg = argv[++i];
    else if (strcmp(argv[i], "--csv") == 0 && i + 1 < argc) csv = argv[++i];
    else if (strcmp(argv[i], "--receiver") == 0 && i + 1 < argc) receiver_pa = 1e5 * atof(argv[++i]);
    else if (!plant_set(&p, argv[i], why, sizeof why)) return complain(why);
  }
  if (p.n_faults == 0) each_valve(&p);

  static card cards[1 + PLANT_FAULTS_MOST];
  for (size_t i = 0; i <= p.n_faults; i++) {
    int32_t fault = i == 0 ? FREEAIR_FAULT_NONE : p.fault[i - 1].fault;
    int32_t status = take(&p, receiver_pa, fault, i == 0 ? 0.0 : p.fault[i - 1].severity, &cards[i]);
    if (status < 0) return complain(freeair_status_text(status));
    const freeair_cycle_result *r = &cards[i].point;
    printf("%-46s %5.2f L/s, ", cards[i].name, 1e3 * r->delivery_m3_s);
    if (r->stages == 2) printf("interstage %.2f bar, ", r->interstage_mean_pa / 1e5);
    printf("indicated %.0f + %.0f W, back out of the inlet %.2f g/s\n", r->lp_indicated_w, r->hp_indicated_w,
           1e3 * r->inlet_backflow_kg_s);
  }
  if (csv != NULL) {
    FILE *out = fopen(csv, "w");
    if (out == NULL) return complain("cannot write the CSV file");
    write_csv(out, cards, p.n_faults + 1);
    if (fclose(out) != 0) return complain("cannot write the CSV file");
  }
  if (svg != NULL && !draw(svg, cards, p.n_faults + 1)) return complain("gnuplot did not draw");
  return 0;
}
