/* SPDX-License-Identifier: MIT */
/* Every table of the handbook is found by name at run time, entry by entry: the
 * function through the description, the entries as the constants of the choice
 * that its parameter takes. */
#include <freeair/catalogue.h>
#include <freeair/describe.h>
#include <freeair/status.h>

#include "../suite.h"

#include <check.h>
#include <math.h>
#include <string.h>

/* An input: a number, or the name of a constant. */
typedef struct input {
  const char *name;
  const char *constant;
  double value;
} input;

/* An entry of a table, as its publisher prints it. */
typedef struct entry {
  const char *function;
  input inputs[4];
  const char *output;
  double value;
} entry;

static const entry entries[] = {
    {"conductor_size", {{"kind", "FREEAIR_CONDUCTOR_COPPER", 0.0}, {"place", NULL, 4.0}}, "area_m2", 2.5e-6},
    {"conductor_table_resistance",
     {{"kind", "FREEAIR_CONDUCTOR_COPPER", 0.0}, {"area_m2", NULL, 2.5e-6}},
     "r20_ohm_m",
     7.41e-3},
    {"conductor_gauge", {{"gauge", NULL, 12.0}}, "diameter_m", 2.0525e-3},
    {"nameplate_code_band", {{"code", "FREEAIR_NAMEPLATE_CODE_G", 0.0}}, "lower", 5.6 / 0.745699872},
    {"nameplate_full_load_current",
     {{"rated_w", NULL, 745.699872}, {"voltage_v", NULL, 230.0}, {"phases", NULL, 1.0}},
     "current_a",
     8.0},
    {"unbalance_derating", {{"unbalance", NULL, 0.03}}, "derating", 0.88},
    {"fitting_loss_coefficient",
     {{"fitting", "FREEAIR_FITTING_ELBOW_90", 0.0}, {"joint", "FREEAIR_FITTING_THREADED", 0.0}},
     "loss_coefficient",
     1.5},
    {"fitting_length_ratio", {{"fitting", "FREEAIR_FITTING_GATE_VALVE", 0.0}}, "ratio", 8.0},
    {"nozzle_discharge_coefficient", {{"opening", "FREEAIR_NOZZLE_WELL_ROUNDED", 0.0}}, "lowest", 0.97},
    {"purity_particle_limits", {{"class_code", NULL, 2.0}}, "medium_1_m3", 6000.0},
    {"purity_water_limits", {{"class_code", NULL, 4.0}}, "dew_point_k", 276.15},
    {"purity_oil_limit", {{"class_code", NULL, 2.0}}, "oil_kg_m3", 0.1e-6},
    {"acceptance_tolerances", {{"flow_m3_s", NULL, 0.3 / 60.0}}, "flow_tolerance", 0.07},
    {"fastener_pitch",
     {{"thread", "FREEAIR_FASTENER_ISO", 0.0}, {"diameter_m", NULL, 0.010}},
     "pitch_m",
     0.0015},
    {"fastener_strength",
     {{"grade", "FREEAIR_FASTENER_ISO_8_8", 0.0}, {"diameter_m", NULL, 0.010}},
     "proof_pa",
     580e6},
    {"capacitor_limits",
     {{"rated_f", NULL, 40e-6}, {"tolerance_class", "FREEAIR_CAPACITOR_RUN_5", 0.0}},
     "maximum_f",
     42e-6},
    {"belt_section_data", {{"section", "FREEAIR_BELT_SECTION_A", 0.0}}, "pulley_m", 0.075},
    {"safety_burn_threshold", {{"contact_s", NULL, 10.0}}, "t_k", 328.15},
    {"reference_conditions", {{"state", "FREEAIR_REFERENCE_ISO_8778", 0.0}}, "relative_humidity", 0.65},
};

/* The function of that name without its prefix. */
static const freeair_function *found(const char *name)
{
  char full[64] = "freeair_";
  ck_assert(strlen(name) < sizeof full - 9);
  memcpy(full + 8, name, strlen(name) + 1);
  const freeair_function *f = freeair_function_find(full);
  ck_assert_msg(f != NULL, "%s is not described", full);
  return f;
}

static size_t constant_at(const char *name)
{
  const size_t at = freeair_constant_find(name);
  ck_assert_msg(at < freeair_constant_count(), "%s is not described", name);
  return at;
}

START_TEST(an_entry_by_name)
{
  const entry *e = &entries[_i];
  const freeair_function *f = found(e->function);
  ck_assert_msg(strlen(freeair_function_source(f)) > 10, "%s has no source", e->function);
  double in[4];
  double out[8];
  const size_t n_in = freeair_function_input_count(f);
  const size_t n_out = freeair_function_output_count(f);
  ck_assert(n_in <= 4 && n_out <= 8);
  int given = 0;
  for (size_t i = 0; i < n_in; i++) {
    const freeair_parameter *p = freeair_function_input(f, i);
    for (size_t k = 0; k < 4 && e->inputs[k].name != NULL; k++) {
      if (strcmp(e->inputs[k].name, p->name) != 0) continue;
      given++;
      in[i] = e->inputs[k].value;
      if (e->inputs[k].constant == NULL) continue;
      const size_t at = constant_at(e->inputs[k].constant);
      ck_assert_str_eq(freeair_constant_enumeration(at), p->choice);
      in[i] = freeair_constant_value(at);
    }
  }
  ck_assert_int_eq(given, (int)n_in);
  ck_assert_int_ge(freeair_function_call(f, in, n_in, out, n_out), 0);
  size_t at = n_out;
  for (size_t i = 0; i < n_out; i++)
    if (strcmp(freeair_function_output(f, i)->name, e->output) == 0) at = i;
  ck_assert_msg(at < n_out, "%s has no output %s", e->function, e->output);
  ck_assert_msg(fabs(out[at] - e->value) <= 1e-4 * e->value, "%s: %g, not %g", e->function, out[at], e->value);
}
END_TEST

/* Each constant of a table's choice has a meaning in words and an entry; a number beyond them has none. */
START_TEST(every_constant_has_an_entry)
{
  static const struct {
    const char *function;
    double others[3]; /* the inputs behind the choice */
  } tables[] = {
      {"nameplate_code_band", {0.0, 0.0, 0.0}},           {"fitting_loss_coefficient", {1.0, 0.0, 0.0}},
      {"nozzle_discharge_coefficient", {0.0, 0.0, 0.0}},  {"belt_section_data", {0.0, 0.0, 0.0}},
      {"conductor_size", {0.0, 0.0, 0.0}},                {"fastener_strength", {0.010, 0.0, 0.0}},
      {"reference_conditions", {0.0, 0.0, 0.0}},          {"pipe_roughness", {0.0, 0.0, 0.0}},
  };
  const freeair_function *f = found(tables[_i].function);
  const freeair_parameter *choice = freeair_function_input(f, 0);
  ck_assert_ptr_nonnull(choice->choice);
  int entries_found = 0;
  for (size_t i = 0; i <= freeair_constant_count(); i++) {
    const int beyond = i == freeair_constant_count();
    if (!beyond && strcmp(freeair_constant_enumeration(i), choice->choice) != 0) continue;
    double in[4] = {beyond ? 9999.0 : freeair_constant_value(i), tables[_i].others[0], tables[_i].others[1],
                    tables[_i].others[2]};
    double out[8];
    const int32_t status =
        freeair_function_call(f, in, freeair_function_input_count(f), out, freeair_function_output_count(f));
    if (beyond) {
      ck_assert_int_lt(status, 0);
      continue;
    }
    ck_assert_msg(status >= 0, "%s: no entry for %s", tables[_i].function, freeair_constant_name(i));
    ck_assert_msg(strlen(freeair_constant_brief(i)) > 3, "%s has no meaning", freeair_constant_name(i));
    entries_found++;
  }
  ck_assert_int_ge(entries_found, 3);
}
END_TEST

int main(void)
{
  TCase *all = tcase_create("all");
  tcase_add_loop_test(all, an_entry_by_name, 0, (int)(sizeof entries / sizeof entries[0]));
  tcase_add_loop_test(all, every_constant_has_an_entry, 0, 8);
  return run_case("tables", all);
}
