/* SPDX-License-Identifier: MIT */
#include <freeair/duty.h>
#include <freeair/pumpup.h>
#include <freeair/status.h>
#include <freeair/verdict.h>

#include "../suite.h"
#include "synthetic_plant.h"

#include <check.h>
#include <stdio.h>
#include <string.h>

enum { most = 400 };

static freeair_pressure_log_phase phases[most];

static freeair_duty_summary sum_up(const record *r, const int32_t *state, const freeair_pressure_log_options *given)
{
  freeair_pressure_log_options o = FREEAIR_PRESSURE_LOG_OPTIONS_INIT;
  if (given != NULL) o = *given;
  size_t n = 0;
  for (size_t i = 0; i < most; i++) phases[i] = (freeair_pressure_log_phase)FREEAIR_PRESSURE_LOG_PHASE_INIT;
  ck_assert_int_eq(
      freeair_pressure_log_segment(r->t_s, r->p_pa, state, r->n, &o, phases, sizeof phases[0], most, &n), FREEAIR_OK);
  freeair_duty_summary s = FREEAIR_DUTY_SUMMARY_INIT;
  ck_assert_int_eq(freeair_duty_from_phases(phases, sizeof phases[0], n, &o, &s), FREEAIR_OK);
  return s;
}

/* The loaded share is recovered within its uncertainty, whatever the logger. */
START_TEST(share_within_its_uncertainty)
{
  const double steps[] = {1.0, 5.0, 10.0, 30.0};
  const double leaks[] = {0.0003, 0.001, 0.003, 0.006};
  int within_two = 0;
  int n = 0;
  for (int k = 0; k < 4; k++) {
    if (steps[_i] > 20.0 && k >= 2) continue; /* two readings in a phase are too few */
    plant p = plant_of(0.3, 0.012, 1.05e6);
    p.leak_kg_s = leaks[k] * 1.2;
    history h = plant_run(&p, 9.5e5, 0, 8.5e5, 10.5e5, 40.0, 9000.0, 0.25);
    int cycles;
    double share = history_share(&h, &cycles);
    for (int with_state = 0; with_state < 2; with_state++)
      for (int noisy = 0; noisy < 3; noisy++) {
        logger l = {.step_s = steps[_i], .jitter = 0.2, .noise_pa = 400.0 * noisy, .resolution_pa = 200.0,
                    .chance = {.state = 17u + (uint64_t)(k + 10 * noisy)}};
        record r = logger_read(&l, &h);
        freeair_duty_summary s = sum_up(&r, with_state ? r.state : NULL, NULL);
        ck_assert_int_eq(s.n_cycles, cycles);
        ck_assert_double_lt(fabs(s.draw_share - share), 4.0 * s.draw_share_uncertainty);
        within_two += fabs(s.draw_share - share) < 2.0 * s.draw_share_uncertainty;
        n++;
        if (s.n_cycles > 2 && steps[_i] < 20.0) ck_assert_double_lt(s.draw_share_uncertainty, 0.05 * share + 0.01);
        ck_assert_double_eq_tol(s.cut_in_pa, 8.5e5, 4.0 * s.cut_in_uncertainty_pa + 3000.0);
        if (with_state) ck_assert_double_eq_tol(s.unloaded_s, 40.0 * cycles, 40.0 + 20.0 * cycles);
        record_free(&r);
      }
    history_free(&h);
  }
  ck_assert_msg(within_two >= 0.9 * n, "%d of %d within two", within_two, n);
}
END_TEST

/* Gas that cools after cut-out looks like a leak and is told from it. */
START_TEST(cooling_is_no_leak)
{
  plant p = plant_of(0.3, 0.012, 1.05e6);
  p.leak_kg_s = 0.0004 * 1.2;
  history h = plant_run(&p, 9.5e5, 0, 8.5e5, 10.5e5, 0.0, 9000.0, 0.25);
  logger l = {.step_s = 10.0, .noise_pa = 100.0, .resolution_pa = 100.0, .chance = {.state = 6}};
  record r = logger_read(&l, &h);
  freeair_duty_summary s = sum_up(&r, NULL, NULL);
  /* slope of the leak alone at the middle of the band, gas at ambient temperature */
  double leak = -p.leak_kg_s * 0.95 * plant_r * p.t_a_k / p.v_m3;
  ck_assert_double_eq_tol(s.idle_slope_pa_s / leak, 1.0, 0.12);
  ck_assert_double_gt(s.cooling_pa, 5e3);
  ck_assert_double_lt(s.cooling_pa, 1e5);
  ck_assert_double_eq_tol(s.slope_share, s.draw_share, 2.0 * s.slope_share_uncertainty);
  record_free(&r);
  history_free(&h);
}
END_TEST

/* From the log alone, the receiver known: each loaded phase is a pump-up test. */
START_TEST(delivery_from_loaded_phases)
{
  plant p = plant_of(0.3, 0.012, 1.05e6);
  p.leak_kg_s = 0.0006 * 1.2;
  history h = plant_run(&p, 9.5e5, 0, 8.5e5, 10.5e5, 0.0, 6000.0, 0.25);
  logger l = {.step_s = 2.0, .noise_pa = 300.0, .resolution_pa = 200.0, .chance = {.state = 12}};
  record r = logger_read(&l, &h);
  freeair_duty_summary s = sum_up(&r, NULL, NULL);
  freeair_pumpup_test t = FREEAIR_PUMPUP_TEST_INIT;
  t.v_receiver_m3 = 0.3;
  t.v_uncertainty_m3 = 0.0;
  t.p_ambient_pa = p.p_a_pa;
  t.t_ambient_k = p.t_a_k;
  t.start = FREEAIR_PUMPUP_CYCLING;
  t.rest_s = s.cycle_s - s.draw_share * s.cycle_s;
  /* at 9.5 bar: inflow of the plant less its leak, as free air */
  double x = (9.5e5 - p.p_a_pa) / (p.p_full_pa - p.p_a_pa);
  double truth = (p.w_kg_s * (1.0 - p.fall * x) - p.leak_kg_s * 0.95) * plant_r * p.t_a_k / p.p_a_pa;
  int tests = 0;
  for (size_t i = 2; i < most && phases[i].count > 0; i++) {
    if (phases[i].kind != FREEAIR_PRESSURE_LOG_LOADED || !phases[i].end_seen) continue;
    freeair_pumpup_result found = FREEAIR_PUMPUP_RESULT_INIT;
    /* the readings at both ends may belong to the neighbours */
    size_t first = phases[i].first + 2;
    size_t n = phases[i].count - 4;
    ck_assert_int_eq(freeair_pumpup_analyse_table(&t, r.t_s + first, r.p_pa + first, n, &found), FREEAIR_OK);
    ck_assert_double_lt(fabs(found.delivery_m3_s - truth), 2.0 * found.delivery_uncertainty_m3_s);
    ck_assert_double_gt(found.bias, 0.2);
    /* leak from the share of the capacity, against what the plant loses */
    double lost = p.leak_kg_s * 0.95 * plant_r * p.t_a_k / p.p_a_pa;
    ck_assert_double_eq_tol(s.draw_share * (found.delivery_m3_s + lost) / lost, 1.0, 0.25);
    tests++;
  }
  ck_assert_int_ge(tests, 5);
  record_free(&r);
  history_free(&h);
}
END_TEST

START_TEST(findings)
{
  plant p = plant_of(0.3, 0.012, 1.05e6);
  p.leak_kg_s = 0.0115 * 1.2;
  history h = plant_run(&p, 2e5, 1, 8.5e5, 10.5e5, 0.0, 4000.0, 0.25); /* levels off */
  logger l = {.step_s = 10.0, .noise_pa = 300.0, .resolution_pa = 100.0, .chance = {.state = 6}};
  record r = logger_read(&l, &h);
  freeair_duty_summary s = sum_up(&r, r.state, NULL);
  ck_assert(s.findings & FREEAIR_DUTY_NEVER_CUTS_OUT);
  ck_assert_double_eq(s.duty, 1.0);
  ck_assert_double_eq(s.draw_share, 1.0);
  s = sum_up(&r, NULL, NULL);
  ck_assert(s.findings & FREEAIR_DUTY_NEVER_CUTS_OUT);
  r.n = 20; /* a pump-up that still rises is not accused */
  s = sum_up(&r, NULL, NULL);
  ck_assert(!(s.findings & FREEAIR_DUTY_NEVER_CUTS_OUT));
  ck_assert(s.findings & FREEAIR_DUTY_FEW_CYCLES);
  record_free(&r);
  history_free(&h);

  p.leak_kg_s = 0.003 * 1.2;
  h = plant_run(&p, 10e5, 0, 1e5, 10.5e5, 0.0, 900.0, 0.25); /* stopped, leaking down */
  r = logger_read(&l, &h);
  s = sum_up(&r, NULL, NULL);
  ck_assert(s.findings & FREEAIR_DUTY_NEVER_LOADS);
  ck_assert_double_lt(s.idle_slope_pa_s, 0.0);
  record_free(&r);
  history_free(&h);
}
END_TEST

/* Measured logs, where the folder with them is named. */
typedef struct measured {
  record r;
  double *loaded;
  double *current;
} measured;

static int read_log(const char *name, const char *pressure, measured *m)
{
  const char *folder = getenv("FREEAIR_TEST_LOGS");
  char path[4096];
  char line[1024];
  if (folder == NULL) return 0;
  snprintf(path, sizeof path, "%s/%s", folder, name);
  FILE *file = fopen(path, "r");
  if (file == NULL) return 0;
  const size_t room = 2000;
  m->r.t_s = malloc(room * sizeof *m->r.t_s);
  m->r.p_pa = malloc(room * sizeof *m->r.p_pa);
  m->r.state = malloc(room * sizeof *m->r.state);
  m->loaded = malloc(room * sizeof *m->loaded);
  m->current = malloc(room * sizeof *m->current);
  m->r.n = 0;
  int at[3] = {-1, -1, -1};
  const char *wanted[3] = {pressure, "DV_eletric", "Motor_current"};
  while (fgets(line, sizeof line, file) != NULL && m->r.n < room) {
    line[strcspn(line, "\r\n")] = '\0';
    double value[3] = {0.0, 0.0, 0.0};
    int day = 0;
    int hour = 0;
    int minute = 0;
    int second = 0;
    int column = 0;
    for (char *cell = line; cell != NULL; column++) {
      char *next = strchr(cell, ',');
      if (next != NULL) *next++ = '\0';
      if (at[0] < 0 || m->r.n == 0)
        for (int k = 0; k < 3; k++)
          if (strcmp(cell, wanted[k]) == 0) at[k] = column;
      if (column == 0) sscanf(cell, "%*d-%*d-%d %d:%d:%d", &day, &hour, &minute, &second);
      for (int k = 0; k < 3; k++)
        if (column == at[k]) value[k] = atof(cell);
      cell = next;
    }
    if (day == 0) continue; /* the header */
    m->r.t_s[m->r.n] = 86400.0 * day + 3600.0 * hour + 60.0 * minute + second;
    m->r.p_pa[m->r.n] = 101325.0 + 1e5 * value[0]; /* gauge, bar */
    m->loaded[m->r.n] = value[1];
    m->current[m->r.n++] = value[2];
  }
  fclose(file);
  return m->r.n > 100;
}

static void free_log(measured *m)
{
  record_free(&m->r);
  free(m->loaded);
  free(m->current);
}

/* Three ways: the pressure alone, the loading solenoid, the motor current. */
static void state_by(const measured *m, int way)
{
  if (way == 1)
    ck_assert_int_eq(freeair_pressure_log_state_from_switch(m->loaded, m->r.n, FREEAIR_PRESSURE_LOG_LOADED,
                                                            FREEAIR_PRESSURE_LOG_IDLE, m->r.state),
                     FREEAIR_OK);
  if (way == 2) {
    double stopped;
    double loaded;
    ck_assert_int_eq(freeair_pressure_log_current_levels(m->current, m->r.n, &stopped, &loaded), FREEAIR_OK);
    ck_assert_int_eq(freeair_pressure_log_state_from_current(m->current, m->r.n, stopped, loaded, m->r.state),
                     FREEAIR_OK);
  }
}

START_TEST(measured_healthy_unit)
{
  const char *columns[] = {"TP3", "Reservoirs"};
  for (int c = 0; c < 2; c++) {
    measured m;
    if (!read_log("metropt3_2020-02-01_00h_normal.csv", columns[c], &m)) {
      printf("skipped: data not present\n");
      return;
    }
    for (int way = 0; way < 3; way++) {
      state_by(&m, way);
      freeair_duty_summary s = sum_up(&m.r, way == 0 ? NULL : m.r.state, NULL);
      ck_assert_int_eq(s.n_loads, 5);
      ck_assert_int_eq(s.n_cycles, 4);
      ck_assert_double_eq_tol(s.cycle_s, 2020.0, 20.0);
      ck_assert_double_eq_tol(s.load_slope_pa_s * 60e-5, 1.3, 0.08);
      ck_assert_double_gt(s.draw_share, 0.03);
      ck_assert_double_lt(s.draw_share, 0.06);
      ck_assert_double_eq_tol(s.slope_share, s.draw_share, 2.0 * s.slope_share_uncertainty);
      ck_assert_double_eq_tol(s.cut_in_pa, 101325.0 + 8.07e5, 1500.0);
      ck_assert_double_eq_tol(s.cut_out_pa, 101325.0 + 10.1e5, 4000.0);
      ck_assert_uint_eq(s.findings, 0u);
      /* a few percent: not called a fault against a tenth */
      int32_t verdict;
      ck_assert_int_eq(freeair_verdict_decide(s.draw_share, s.draw_share_uncertainty, 0.0, 0.1, 0.95, &verdict),
                       FREEAIR_OK);
      ck_assert_int_eq(verdict, FREEAIR_VERDICT_MEETS);
      if (way == 2) ck_assert_double_eq_tol(s.unloaded_s, 4.0 * 415.0 + 335.0, 40.0);
    }
    free_log(&m);
  }
}
END_TEST

START_TEST(measured_air_leak)
{
  const char *columns[] = {"TP3", "Reservoirs"};
  for (int c = 0; c < 2; c++) {
    measured m;
    if (!read_log("metropt3_2020-04-18_12h_airleak.csv", columns[c], &m)) {
      printf("skipped: data not present\n");
      return;
    }
    for (int way = 0; way < 3; way++) {
      state_by(&m, way);
      freeair_duty_summary s = sum_up(&m.r, way == 0 ? NULL : m.r.state, NULL);
      ck_assert(s.findings & FREEAIR_DUTY_NEVER_CUTS_OUT);
      ck_assert_double_eq(s.duty, 1.0);
      ck_assert_double_eq(s.draw_share, 1.0);
      ck_assert_int_eq(s.n_loads, 1);
      ck_assert_int_eq(s.n_cycles, 0);
    }
    free_log(&m);
  }
}
END_TEST

int main(void)
{
  TCase *tc = tcase_create("duty");
  tcase_set_timeout(tc, 120);
  tcase_add_loop_test(tc, share_within_its_uncertainty, 0, 4);
  tcase_add_test(tc, cooling_is_no_leak);
  tcase_add_test(tc, delivery_from_loaded_phases);
  tcase_add_test(tc, findings);
  tcase_add_test(tc, measured_healthy_unit);
  tcase_add_test(tc, measured_air_leak);
  return run_case("duty", tc);
}
