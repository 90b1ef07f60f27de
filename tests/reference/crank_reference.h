/* SPDX-License-Identifier: MIT */
/* The crank-angle model a second time, written from its equations without a look
 * at the library's own source, and integrated by SUNDIALS CVODE. Two stages of
 * one cylinder each, or a single stage of one or two cylinders. The including
 * file includes <cvode/cvode.h> first. */
#ifndef FREEAIR_TESTS_CRANK_REFERENCE_H
#define FREEAIR_TESTS_CRANK_REFERENCE_H

#include <freeair/dry_air_ideal.h>
#include <freeair/machine.h>

#include <math.h>
#include <nvector/nvector_serial.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sundials/sundials_context.h>
#include <sunlinsol/sunlinsol_dense.h>
#include <sunmatrix/sunmatrix_dense.h>

#define CRANK_PI 3.14159265358979323846

/* Volumes: 0 plenum, 1 first cylinder, 2 second cylinder, 3 intercooler, 4 line. */
enum { PLENUM, FIRST, SECOND, COOLER, LINE, GAS_VOLUMES };
/* Integrals carried along as states. */
enum { DELIVERED, TAKEN, HEAT1, HEAT2, WORK1, WORK2, WARMED, MEAN_P, MEAN_T, DELIVERED_H, INTEGRALS };
enum { CRANK_STATES = 2 * GAS_VOLUMES + INTEGRALS };

typedef struct crank {
  freeair_machine m; /* complete */
  double pa, ta, p_receiver, t_receiver, volts;
  double R, k, cv, cp;
  double omega;
  double wall[2];
  long evaluations;
  double psi_edge, slope_edge; /* nozzle function at a relative difference of 1e-3 */
  int two_stage, two_cylinders;
} crank;

static double crank_psi(double k, double x)
{
  double r = 1.0 - x;
  double r_critical = pow(2.0 / (k + 1.0), k / (k - 1.0));
  if (r < r_critical) r = r_critical;
  return sqrt(2.0 * k / (k - 1.0) * (pow(r, 2.0 / k) - pow(r, (k + 1.0) / k)));
}

/* Internal energy over the gas constant, less that of the constant heat capacity
 * at 293.15 K, and its slope, in kelvin. */
static double crank_energy(const crank *c, double t, double *slope)
{
  const double base = 293.15;
  double u = t / (c->k - 1.0);
  *slope = 1.0 / (c->k - 1.0);
  if (!(c->m.heat_capacity_rise > 0.0)) return u;
  double h, h_base, cp, cp_base, rho;
  double inside = fmin(fmax(t, 60.0), 2000.0);
  freeair_dry_air_ideal_density(1e5, base, &rho);
  double r = 1e5 / (rho * base);
  freeair_dry_air_ideal_enthalpy(inside, &h);
  freeair_dry_air_ideal_enthalpy(base, &h_base);
  freeair_dry_air_ideal_heat_capacity(inside, &cp);
  freeair_dry_air_ideal_heat_capacity(base, &cp_base);
  *slope += c->m.heat_capacity_rise * (cp - cp_base) / r;
  return u + c->m.heat_capacity_rise * (h - h_base - cp_base * (inside - base)) / r;
}

static double crank_temperature(const crank *c, double energy)
{
  double t = energy / c->cv;
  for (int i = 0; c->m.heat_capacity_rise > 0.0 && i < 30; i++) {
    double slope;
    double step = (crank_energy(c, t, &slope) - energy / c->R) / slope;
    t -= step;
    if (fabs(step) < 1e-13 * t) break;
  }
  return t;
}

static double crank_enthalpy(const crank *c, double t)
{
  double slope;
  return c->m.heat_capacity_rise > 0.0 ? c->R * (crank_energy(c, t, &slope) + t) : c->cp * t;
}

static void crank_setup(crank *c, const freeair_machine *complete, double pa, double ta, double p_receiver)
{
  memset(c, 0, sizeof *c);
  c->m = *complete;
  c->pa = pa;
  c->ta = ta;
  c->p_receiver = p_receiver;
  c->t_receiver = ta;
  c->volts = complete->motor_rated_v;
  c->R = complete->gas_constant_j_kg_k;
  c->k = complete->heat_capacity_ratio;
  c->cv = c->R / (c->k - 1.0);
  c->cp = c->cv + c->R;
  c->two_stage = complete->stages == 2;
  c->two_cylinders = c->two_stage || complete->lp_cylinders == 2;
  double x = 1e-3;
  double r = 1.0 - x;
  double k = c->k;
  c->psi_edge = crank_psi(k, x);
  /* derivative of the root of 2k/(k-1) (r^(2/k) - r^((k+1)/k)) by x = 1 - r */
  c->slope_edge = -k / (k - 1.0) * (2.0 / k * pow(r, 2.0 / k - 1.0) - (k + 1.0) / k * pow(r, 1.0 / k)) / c->psi_edge;
  c->wall[0] = c->wall[1] = ta + 50.0;
  c->omega = 2.0 * CRANK_PI * c->m.pulley_ratio * c->m.motor_synchronous_rev_s * (1.0 - c->m.motor_rated_slip) *
             (1.0 - c->m.belt_slip);
}

static double crank_nozzle(const crank *c, double area, double p_up, double t_up, double p_down)
{
  double x = (p_up - p_down) / p_up;
  double psi;
  if (x < 1e-3) {
    double e = 1e-3;
    double b = (c->slope_edge - c->psi_edge / e) / e;
    double a = c->psi_edge / e - b * e;
    psi = a * x + b * x * x;
  } else {
    psi = crank_psi(c->k, x);
  }
  return area * p_up / sqrt(c->R * t_up) * psi;
}

static double crank_smooth(double x)
{
  if (x <= 0.0) return 0.0;
  if (x >= 1.0) return 1.0;
  return 3.0 * x * x - 2.0 * x * x * x;
}

static double crank_valve(double open, double leak, double lift, double dp)
{
  return leak + (open - leak) * crank_smooth(dp / lift);
}

static void crank_geometry(const crank *c, int second, double t, double *volume, double *dv_dt, double *bore)
{
  const freeair_machine *m = &c->m;
  int hp = second && c->two_stage;
  double stroke = hp ? m->hp_stroke_m : m->lp_stroke_m;
  double clearance = hp ? m->hp_clearance : m->lp_clearance;
  double lag = !second ? 0.0 : c->two_stage ? m->phase_rad : m->lp_spread_rad;
  double r = 0.5 * stroke;
  double a = c->omega * t - lag;
  double lam = m->rod_ratio;
  *bore = hp ? m->hp_bore_m : m->lp_bore_m;
  double area = CRANK_PI / 4.0 * *bore * *bore;
  double x = r * (1.0 - cos(a));
  double dx = r * sin(a);
  if (lam > 0.0) {
    double root = sqrt(1.0 - lam * lam * sin(a) * sin(a));
    x += r / lam * (1.0 - root);
    dx += r * lam * sin(a) * cos(a) / root;
  }
  *volume = area * (x + clearance * stroke);
  *dv_dt = area * dx * c->omega;
}

typedef struct crank_view {
  double p[GAS_VOLUMES], T[GAS_VOLUMES], dm[GAS_VOLUMES], dU[GAS_VOLUMES];
} crank_view;

/* Lets gas flow from volume a to b, or the other way; b < 0 is a boundary. */
static double crank_join(const crank *c, crank_view *w, int a, int b, double area, double p_b, double t_b,
                         double *enthalpy)
{
  double pb = b >= 0 ? w->p[b] : p_b;
  double tb = b >= 0 ? w->T[b] : t_b;
  double flow = 0.0;
  double h;
  if (w->p[a] >= pb) {
    flow = crank_nozzle(c, area, w->p[a], w->T[a], pb);
    h = flow * crank_enthalpy(c, w->T[a]);
  } else {
    flow = -crank_nozzle(c, area, pb, tb, w->p[a]);
    h = flow * crank_enthalpy(c, tb);
  }
  w->dm[a] -= flow;
  w->dU[a] -= h;
  if (b >= 0) {
    w->dm[b] += flow;
    w->dU[b] += h;
  }
  if (enthalpy != NULL) *enthalpy = h;
  return flow;
}

static double crank_wall_heat(const crank *c, double T, double mass, double V, double bore, double stroke,
                              double wall)
{
  double mu = 1.458e-6 * pow(T, 1.5) / (T + 110.4);
  double conductivity = 2.4947e-3 * pow(T, 1.5) / (T + 194.0);
  double piston_speed = 2.0 * stroke * c->omega / (2.0 * CRANK_PI);
  double re = mass / V * piston_speed * bore / mu;
  double h = c->m.heat_coefficient * pow(re, c->m.heat_exponent) * conductivity / bore;
  double face = CRANK_PI / 4.0 * bore * bore;
  return h * (2.0 * face + CRANK_PI * bore * V / face) * (T - wall);
}

static int crank_rhs(double t, N_Vector state, N_Vector rate, void *user)
{
  crank *c = user;
  const freeair_machine *m = &c->m;
  const double *y = N_VGetArrayPointer(state);
  double *f = N_VGetArrayPointer(rate);
  crank_view w;
  double V[GAS_VOLUMES], dV[2], bore[2];
  c->evaluations++;
  memset(&w, 0, sizeof w);
  memset(f, 0, sizeof(double) * CRANK_STATES);
  V[PLENUM] = m->plenum_m3;
  V[COOLER] = m->intercooler_m3;
  V[LINE] = m->line_m3;
  crank_geometry(c, 0, t, &V[FIRST], &dV[0], &bore[0]);
  crank_geometry(c, 1, t, &V[SECOND], &dV[1], &bore[1]);
  for (int v = 0; v < GAS_VOLUMES; v++) {
    if (!(y[2 * v] > 0.0) || !(y[2 * v + 1] > 0.0)) return 1;
    w.T[v] = crank_temperature(c, y[2 * v + 1] / y[2 * v]);
    w.p[v] = y[2 * v] * c->R * w.T[v] / V[v];
  }
  double *q = f + 2 * GAS_VOLUMES;
  /* counted inwards */
  q[TAKEN] = -crank_join(c, &w, PLENUM, -1, m->filter_area_m2, c->pa, c->ta, NULL);
  int after_first = c->two_stage ? COOLER : LINE;
  double area = crank_valve(m->lp_suction_area_m2, m->lp_suction_leak_m2, m->lp_suction_lift_pa,
                            w.p[PLENUM] - w.p[FIRST]);
  crank_join(c, &w, PLENUM, FIRST, area, 0, 0, NULL);
  area = crank_valve(m->lp_discharge_area_m2, m->lp_discharge_leak_m2, m->lp_discharge_lift_pa,
                     w.p[FIRST] - w.p[after_first]);
  crank_join(c, &w, FIRST, after_first, area, 0, 0, NULL);
  crank_join(c, &w, FIRST, -1, m->lp_ring_area_m2, c->pa, m->crankcase_k, NULL);
  crank_join(c, &w, FIRST, -1, m->lp_gasket_leak_m2, c->pa, c->ta, NULL);
  if (c->two_stage) {
    area = crank_valve(m->hp_suction_area_m2, m->hp_suction_leak_m2, m->hp_suction_lift_pa,
                       w.p[COOLER] - w.p[SECOND]);
    if (area > 0.0) area = 1.0 / sqrt(1.0 / (area * area) + 1.0 / (m->intercooler_area_m2 * m->intercooler_area_m2));
    crank_join(c, &w, COOLER, SECOND, area, 0, 0, NULL);
    area = crank_valve(m->hp_discharge_area_m2, m->hp_discharge_leak_m2, m->hp_discharge_lift_pa,
                       w.p[SECOND] - w.p[LINE]);
    crank_join(c, &w, SECOND, LINE, area, 0, 0, NULL);
    crank_join(c, &w, SECOND, -1, m->hp_ring_area_m2, c->pa, m->crankcase_k, NULL);
    crank_join(c, &w, SECOND, -1, m->hp_gasket_leak_m2, c->pa, c->ta, NULL);
    crank_join(c, &w, COOLER, -1, m->intercooler_leak_m2, c->pa, c->ta, NULL);
    double lift = (w.p[COOLER] - m->relief_set_pa) / (0.1 * m->relief_set_pa);
    crank_join(c, &w, COOLER, -1, m->relief_area_m2 * crank_smooth(lift), c->pa, c->ta, NULL);
    w.dU[COOLER] -= m->intercooler_ua_w_k * (w.T[COOLER] - c->ta);
  } else if (c->two_cylinders) {
    double leaks = m->lp_leaking_cylinders == 1 ? 0.0 : 1.0;
    area = crank_valve(m->lp_suction_area_m2, leaks * m->lp_suction_leak_m2, m->lp_suction_lift_pa,
                       w.p[PLENUM] - w.p[SECOND]);
    crank_join(c, &w, PLENUM, SECOND, area, 0, 0, NULL);
    area = crank_valve(m->lp_discharge_area_m2, leaks * m->lp_discharge_leak_m2, m->lp_discharge_lift_pa,
                       w.p[SECOND] - w.p[LINE]);
    crank_join(c, &w, SECOND, LINE, area, 0, 0, NULL);
    crank_join(c, &w, SECOND, -1, m->lp_ring_area_m2, c->pa, m->crankcase_k, NULL);
  }
  if (c->two_cylinders) crank_join(c, &w, FIRST, SECOND, m->gasket_breach_m2, 0, 0, NULL);
  crank_join(c, &w, LINE, -1, m->unloader_leak_m2, c->pa, c->ta, NULL);
  area = crank_valve(m->check_valve_area_m2, m->check_valve_leak_m2, m->check_valve_lift_pa, w.p[LINE] - c->p_receiver);
  q[DELIVERED] = crank_join(c, &w, LINE, -1, area, c->p_receiver, c->t_receiver, &q[DELIVERED_H]);
  w.dU[LINE] -= m->line_ua_w_k * (w.T[LINE] - c->ta);
  double warm = c->wall[0];
  if (!c->two_stage && c->two_cylinders) warm = 0.5 * (c->wall[0] + c->wall[1]);
  q[WARMED] = m->suction_ua_w_k * (warm - w.T[PLENUM]);
  w.dU[PLENUM] += q[WARMED];

  for (int i = 0; i < 2; i++) {
    if (i == 1 && !c->two_cylinders) break;
    int v = i == 0 ? FIRST : SECOND;
    double stroke = i == 1 && c->two_stage ? m->hp_stroke_m : m->lp_stroke_m;
    q[HEAT1 + i] = crank_wall_heat(c, w.T[v], y[2 * v], V[v], bore[i], stroke, c->wall[i]);
    q[WORK1 + i] = w.p[v] * dV[i];
    w.dU[v] -= q[HEAT1 + i] + q[WORK1 + i];
  }
  q[MEAN_P] = w.p[COOLER];
  q[MEAN_T] = w.T[COOLER];
  for (int v = 0; v < GAS_VOLUMES; v++) {
    f[2 * v] = w.dm[v];
    f[2 * v + 1] = w.dU[v];
  }
  /* volumes that do not take part */
  if (!c->two_stage) f[2 * COOLER] = f[2 * COOLER + 1] = 0.0;
  if (!c->two_cylinders) f[2 * SECOND] = f[2 * SECOND + 1] = 0.0;
  return 0;
}

typedef struct crank_integrator {
  SUNContext context;
  void *cvode;
  N_Vector y, tolerance;
  SUNMatrix matrix;
  SUNLinearSolver solver;
} crank_integrator;

static void crank_fill(const crank *c, double *y, int v, double p, double T, double V)
{
  y[2 * v] = p * V / (c->R * T);
  y[2 * v + 1] = p * V / (c->k - 1.0);
}

static void crank_begin(crank *c, crank_integrator *g, double relative)
{
  double V, dV, bore;
  if (SUNContext_Create(NULL, &g->context) != 0) abort();
  g->y = N_VNew_Serial(CRANK_STATES, g->context);
  g->tolerance = N_VNew_Serial(CRANK_STATES, g->context);
  double *y = N_VGetArrayPointer(g->y);
  double *tolerance = N_VGetArrayPointer(g->tolerance);
  double between = c->two_stage ? sqrt(c->pa * c->p_receiver) : c->p_receiver;
  crank_fill(c, y, PLENUM, c->pa, c->ta, c->m.plenum_m3);
  crank_geometry(c, 0, 0.0, &V, &dV, &bore);
  crank_fill(c, y, FIRST, between, c->ta + 80.0, V);
  crank_geometry(c, 1, 0.0, &V, &dV, &bore);
  crank_fill(c, y, SECOND, c->two_stage ? between : c->pa, c->ta + 40.0, V);
  crank_fill(c, y, COOLER, between, c->ta + 20.0, c->m.intercooler_m3);
  crank_fill(c, y, LINE, c->p_receiver, c->ta + 60.0, c->m.line_m3);
  double swept = CRANK_PI / 4.0 * c->m.lp_bore_m * c->m.lp_bore_m * c->m.lp_stroke_m;
  double charge = swept * c->pa / (c->R * c->ta);
  for (int i = 0; i < CRANK_STATES; i++) {
    double scale = i % 2 == 0 ? charge : charge * c->cv * c->ta;
    if (i >= 2 * GAS_VOLUMES) {
      int q = i - 2 * GAS_VOLUMES;
      scale = q == DELIVERED || q == TAKEN ? charge : charge * c->cp * c->ta;
      if (q == MEAN_P) scale = between / c->omega;
      if (q == MEAN_T) scale = c->ta / c->omega;
      y[i] = 0.0;
    }
    tolerance[i] = 0.01 * relative * scale;
  }
  g->cvode = CVodeCreate(CV_BDF, g->context);
  g->matrix = SUNDenseMatrix(CRANK_STATES, CRANK_STATES, g->context);
  g->solver = SUNLinSol_Dense(g->y, g->matrix, g->context);
  if (CVodeInit(g->cvode, crank_rhs, 0.0, g->y) != 0 || CVodeSVtolerances(g->cvode, relative, g->tolerance) != 0 ||
      CVodeSetLinearSolver(g->cvode, g->solver, g->matrix) != 0 || CVodeSetUserData(g->cvode, c) != 0 ||
      CVodeSetMaxNumSteps(g->cvode, 2000000) != 0)
    abort();
}

static void crank_end(crank_integrator *g)
{
  CVodeFree(&g->cvode);
  SUNLinSolFree(g->solver);
  SUNMatDestroy(g->matrix);
  N_VDestroy(g->y);
  N_VDestroy(g->tolerance);
  SUNContext_Free(&g->context);
}

/* One revolution; the integrals of it are left behind the states. */
static int crank_revolution(crank *c, crank_integrator *g)
{
  double *y = N_VGetArrayPointer(g->y);
  double period = 2.0 * CRANK_PI / c->omega;
  double t;
  for (int i = 2 * GAS_VOLUMES; i < CRANK_STATES; i++) y[i] = 0.0;
  if (CVodeReInit(g->cvode, 0.0, g->y) != 0 || CVodeSetStopTime(g->cvode, period) != 0) return -1;
  return CVode(g->cvode, period, g->y, &t, CV_NORMAL) < 0 ? -1 : 0;
}

static double crank_friction(const crank *c, int second)
{
  int hp = second && c->two_stage;
  double bore = hp ? c->m.hp_bore_m : c->m.lp_bore_m;
  double stroke = hp ? c->m.hp_stroke_m : c->m.lp_stroke_m;
  return c->m.fmep_pa * CRANK_PI / 4.0 * bore * bore * stroke * c->omega / (2.0 * CRANK_PI);
}

typedef struct crank_answer {
  double delivery_kg_s, interstage_pa, intercooler_k, shaft_w, speed_rev_s, wall_k[2], delivery_m3_s;
  int revolutions;
} crank_answer;

/* Walls and speed after a revolution, under-relaxed; returns how far they move. */
static double crank_settle(crank *c, const double *q, double period, double relax)
{
  double change = 0.0;
  double walls = !c->two_stage && c->two_cylinders ? 2.0 : 1.0;
  double power = 0.0;
  for (int i = 0; i < (c->two_cylinders ? 2 : 1); i++) {
    int first_stage = i == 0 || !c->two_stage;
    double ua = first_stage ? c->m.lp_wall_ua_w_k : c->m.hp_wall_ua_w_k;
    double suction = 0.0;
    if (first_stage) {
      double mean = walls > 1.0 ? 0.5 * (c->wall[0] + c->wall[1]) : c->wall[0];
      double plenum = mean - q[WARMED] / (period * fmax(c->m.suction_ua_w_k, 1e-300));
      suction = c->m.suction_ua_w_k / walls * (c->wall[i] - plenum);
    }
    double target = c->ta + (q[HEAT1 + i] / period + 0.5 * crank_friction(c, i) - suction) / ua;
    change = fmax(change, fabs(target - c->wall[i]) / 300.0);
    power += crank_friction(c, i) - q[WORK1 + i] / period;
    c->wall[i] += relax * (target - c->wall[i]);
  }
  double slip = c->m.motor_rated_slip * power / (c->m.belt_efficiency * c->m.motor_rated_w) *
                pow(c->m.motor_rated_v / c->volts, 2.0) / c->m.motor_torque_factor;
  double omega = 2.0 * CRANK_PI * c->m.motor_synchronous_rev_s * (1.0 - slip) * c->m.pulley_ratio *
                 (1.0 - c->m.belt_slip);
  change = fmax(change, fabs(omega / c->omega - 1.0));
  c->omega = omega;
  return change;
}

/* Plain iteration of revolutions until nothing changes by more than small, in
 * charges of the first cylinder. */
static int crank_solve(crank *c, crank_integrator *g, double small, int most, crank_answer *a)
{
  double before[2 * GAS_VOLUMES];
  double *y = N_VGetArrayPointer(g->y);
  double swept = CRANK_PI / 4.0 * c->m.lp_bore_m * c->m.lp_bore_m * c->m.lp_stroke_m;
  double charge = swept * c->pa / (c->R * c->ta);
  for (int n = 1; n <= most; n++) {
    memcpy(before, y, sizeof before);
    double period = 2.0 * CRANK_PI / c->omega;
    if (crank_revolution(c, g) != 0) return -1;
    const double *q = y + 2 * GAS_VOLUMES;
    double change = 0.0;
    for (int i = 0; i < 2 * GAS_VOLUMES; i++) {
      double scale = i % 2 == 0 ? charge : charge * c->cv * c->ta;
      change = fmax(change, fabs(y[i] - before[i]) / scale);
    }
    double power = 0.0;
    for (int i = 0; i < (c->two_cylinders ? 2 : 1); i++) power += crank_friction(c, i) - q[WORK1 + i] / period;
    a->delivery_kg_s = q[DELIVERED] / period;
    a->delivery_m3_s = a->delivery_kg_s * c->R * c->ta / c->pa;
    a->interstage_pa = q[MEAN_P] / period;
    a->intercooler_k = q[MEAN_T] / period;
    a->shaft_w = power;
    a->speed_rev_s = 1.0 / period;
    a->wall_k[0] = c->wall[0];
    a->wall_k[1] = c->wall[1];
    a->revolutions = n;
    change = fmax(change, crank_settle(c, q, period, 0.3));
    if (change < small) return 0;
  }
  return 1;
}

#endif
