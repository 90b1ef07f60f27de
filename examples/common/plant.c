/* SPDX-License-Identifier: MIT */
#include "plant.h"

#include "quantity.h"

#include <freeair/freeair.h>

#include <math.h>
#include <stdlib.h>
#include <string.h>

const char plant_help[] =
    "SETTINGS, each NAME=VALUE with any unit: stages, cylinders, bore, second_bore, stroke, speed, receiver,\n"
    "cut_in, cut_out (absolute), barometer, ambient, arrangement (v or side_by_side);\n"
    "fault=NAME:SEVERITY with a fault by a part of its name and a severity from 0 to 1, any number of times.";

void plant_demonstration(plant *p)
{
  memset(p, 0, sizeof *p);
  p->machine = (freeair_machine)FREEAIR_MACHINE_INIT;
  p->site = (freeair_machine_site)FREEAIR_MACHINE_SITE_INIT;
  p->machine.arrangement = FREEAIR_MACHINE_SIDE_BY_SIDE;
  p->machine.lp_bore_m = 0.12;
  p->machine.hp_bore_m = 0.066;
  p->machine.lp_stroke_m = 0.09;
  p->machine.speed_rev_s = 11.0;
  p->machine.receiver_m3 = 0.3;
}

static int32_t fault_by_name(const char *name, size_t length)
{
  for (int32_t i = 0; i < freeair_fault_count(); i++)
    for (const char *at = freeair_fault_name(i); *at != '\0'; at++)
      if (strncmp(at, name, length) == 0) return i;
  return -1;
}

static int set_fault(plant *p, const char *value, char *why, size_t size)
{
  const char *colon = strrchr(value, ':');
  size_t length = colon == NULL ? strlen(value) : (size_t)(colon - value);
  int32_t fault = length > 0 ? fault_by_name(value, length) : -1;
  double severity = colon == NULL ? 0.5 : atof(colon + 1);
  int32_t applies = 0;
  if (fault < 0) {
    snprintf(why, size, "no fault is called '%.*s'", (int)length, value);
  } else if (!(severity >= 0.0 && severity <= 1.0)) {
    snprintf(why, size, "a severity lies between 0 and 1");
  } else if (p->n_faults == PLANT_FAULTS_MOST) {
    snprintf(why, size, "at most %d faults", PLANT_FAULTS_MOST);
  } else if (freeair_fault_applies(&p->machine, fault, &applies) == FREEAIR_OK && !applies) {
    snprintf(why, size, "this machine cannot have the fault '%s'", freeair_fault_name(fault));
  } else {
    p->fault[p->n_faults++] = (plant_fault){fault, severity};
    return 1;
  }
  return 0;
}

int plant_set(plant *p, const char *setting, char *why, size_t size)
{
  const char *equals = strchr(setting, '=');
  if (equals == NULL) {
    snprintf(why, size, "'%s' is not NAME=VALUE", setting);
    return 0;
  }
  size_t length = (size_t)(equals - setting);
  const char *value = equals + 1;
  if (length == 5 && strncmp(setting, "fault", 5) == 0) return set_fault(p, value, why, size);
  if (strncmp(setting, "arrangement=", 12) == 0) {
    p->machine.arrangement = strcmp(value, "v") == 0 ? FREEAIR_MACHINE_V : FREEAIR_MACHINE_SIDE_BY_SIDE;
    return 1;
  }
  const struct {
    const char *name;
    const char *unit;
    double *field;
    int32_t *count;
  } known[] = {
      {"stages", "1", NULL, &p->machine.stages},
      {"cylinders", "1", NULL, &p->machine.lp_cylinders},
      {"bore", "m", &p->machine.lp_bore_m, NULL},
      {"second_bore", "m", &p->machine.hp_bore_m, NULL},
      {"stroke", "m", &p->machine.lp_stroke_m, NULL},
      {"speed", "rev/s", &p->machine.speed_rev_s, NULL},
      {"receiver", "m3", &p->machine.receiver_m3, NULL},
      {"cut_in", "Pa", &p->machine.cut_in_pa, NULL},
      {"cut_out", "Pa", &p->machine.cut_out_pa, NULL},
      {"barometer", "Pa", &p->site.barometric_pa, NULL},
      {"ambient", "K", &p->site.ambient_k, NULL},
  };
  for (size_t i = 0; i < sizeof known / sizeof known[0]; i++) {
    if (strlen(known[i].name) != length || strncmp(setting, known[i].name, length) != 0) continue;
    double number;
    quantity_context context = {known[i].unit, NAN, 0};
    if (!quantity_read(value, &context, &number, why, size)) return 0;
    if (known[i].field != NULL) *known[i].field = number;
    else *known[i].count = (int32_t)number;
    return 1;
  }
  snprintf(why, size, "nothing is called '%.*s'", (int)length, setting);
  return 0;
}

FILE *plant_gnuplot(const char *svg, int width, int height)
{
  FILE *pipe = popen("gnuplot", "w");
  if (pipe == NULL) return NULL;
  fprintf(pipe, "set terminal svg size %d,%d dynamic font 'sans,14' background rgb 'white'\n", width, height);
  fprintf(pipe, "set output '%s'\nset grid\nset key top left\nset style data lines\n", svg);
  return pipe;
}

int plant_gnuplot_end(FILE *pipe)
{
  return pclose(pipe) == 0;
}
