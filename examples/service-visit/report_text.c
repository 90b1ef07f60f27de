/* SPDX-License-Identifier: MIT */
#include "report.h"
#include "show.h"

#include <math.h>
#include <stdio.h>
#include <string.h>

enum { CAUSES_SHOWN = 5, REASONS_SHOWN = 4, CHECKS_SHOWN = 4 };

static void heading(int number, const char *text)
{
  printf("\n%d  %s\n\n", number, text);
}

static const freeair_parameter *reading_field(int32_t reading)
{
  for (size_t i = 0; i < freeair_structure_count(); i++)
    if (strcmp(freeair_structure_name(freeair_structure_at(i)), "freeair_evidence_readings") == 0)
      return freeair_structure_field(freeair_structure_at(i), (size_t)(2 * reading));
  return NULL;
}

static const char *show_reading(const assessment *a, int32_t reading, double value, char text[SHOWN])
{
  const freeair_parameter *field = reading_field(reading);
  const int difference = strstr(field->name, "difference") != NULL || strstr(field->name, "drop") != NULL;
  if (strcmp(field->unit, "s") == 0) return show_time(value, text);
  return show(a->v, value, field->unit, difference ? SHOW_DIFFERENCE : SHOW_READING, text);
}

static const char *verdict_word(int32_t verdict)
{
  return verdict == FREEAIR_VERDICT_MEETS ? "meets" : verdict == FREEAIR_VERDICT_FAILS ? "SHORT" : "CANNOT TELL";
}

static void head(const assessment *a)
{
  const visit *v = a->v;
  char t[SHOWN], u[SHOWN], w[SHOWN];
  printf("%s\n", v->title[0] != '\0' ? v->title : "Service visit");
  for (size_t i = 0; i < strlen(v->title); i++) putchar('=');
  printf("\n");
  if (v->note[0] != '\0') print_wrapped("Note", 12, v->note);
  if (v->complaint[0] != '\0') print_wrapped("Complaint", 12, v->complaint);
  if (a->has_machine) {
    const freeair_machine *m = &a->machine;
    printf("%-12s%s, %s; receiver %s, set to run from %s to %s\n", "Machine",
           m->stages == 2 ? "two stages" : "one stage",
           m->arrangement == FREEAIR_MACHINE_SIDE_BY_SIDE ? "cylinders side by side" : "cylinders in a V or apart",
           show(v, m->receiver_m3, "m3", SHOW_READING, t), show(v, m->cut_in_pa, "Pa", SHOW_READING, u),
           show(v, m->cut_out_pa, "Pa", SHOW_READING, w));
    if (!isnan(m->rated_delivery_m3_s)) {
      printf("%-12s%s of free air", "Rating", show(v, m->rated_delivery_m3_s, "m3/s", SHOW_READING, t));
      printf(" at %s; reference state\n%12s%s\n", show(v, m->rated_pa, "Pa", SHOW_READING, u), "", a->rated_state);
    }
  }
  double barometer = v->site.barometric_pa;
  freeair_units_from_si(barometer, v->metric ? "mbar" : "inHg", &barometer);
  printf("%-12sbarometer %.*f %s%s", "Site", v->metric ? 0 : 1, barometer, v->metric ? "mbar" : "inHg",
         isnan(v->altitude_m) ? "" : " (estimated from the altitude)");
  if (!isnan(v->site.ambient_k)) printf(", %s", show(v, v->site.ambient_k, "K", SHOW_READING, t));
  if (!isnan(v->site.supply_v)) printf(", %s at the running motor", show(v, v->site.supply_v, "V", SHOW_READING, t));
  printf("\n            Pressures are gauge pressures here; flows are free air at this site.\n");
}

static void expected(const assessment *a)
{
  const visit *v = a->v;
  char t[SHOWN], u[SHOWN], w[SHOWN];
  heading(1, "What this machine should do here today");
  if (!a->has_machine) {
    print_wrapped("  ", 2,
                  "The visit does not describe the machine far enough to say: bore, stroke, receiver and site "
                  "temperature are wanted. Below is what the readings and observations say by themselves.");
    return;
  }
  printf("  %-34s %s at %s\n", "Free air delivery", show(v, a->point.delivery_m3_s, "m3/s", SHOW_READING, t),
         show(v, isnan(v->readings_at_pa) ? a->machine.cut_out_pa : v->readings_at_pa, "Pa", SHOW_READING, u));
  for (size_t i = 0; i < a->n_runs; i++) {
    const assessed_run *r = &a->run[i];
    int column = printf("  From %s to %s", show(v, r->run->p_from_pa, "Pa", SHOW_READING, t),
                        show(v, r->run->p_to_pa, "Pa", SHOW_READING, u));
    printf("%*s", column < 37 ? 37 - column : 1, "");
    if (isinf(r->expected_s))
      printf("a sound machine does not get there\n");
    else {
      printf("%s", show_time(r->expected_s, t));
      printf(", give or take %s (two in three), if sound\n", show_time(r->u_expected_s, w));
      if (fabs(r->expected_s / r->rated_site_s - 1.0) > 0.03)
        printf("  %*s%s where the rating holds: the site alone makes the difference\n", 35, "",
               show_time(r->rated_site_s, t));
    }
  }
  if (a->machine.stages == 2)
    printf("  %-34s %s\n", "Interstage pressure", show(v, a->point.interstage_mean_pa, "Pa", SHOW_READING, t));
  printf("  %-34s %s pump, %s motor\n", "Speeds", show(v, a->point.speed_rev_s, "rev/s", SHOW_READING, t),
         show(v, a->point.motor_speed_rev_s, "rev/s", SHOW_READING, u));
  printf("  %-34s %s", "Discharge temperature", show(v, a->point.lp_discharge_k, "K", SHOW_READING, t));
  if (a->machine.stages == 2) printf(" LP, %s HP", show(v, a->point.hp_discharge_k, "K", SHOW_READING, u));
  printf("\n");
  if (!isnan(a->machine.rated_delivery_m3_s)) {
    double plain;
    char text[VISIT_TEXT];
    if (freeair_machine_displacement(&a->machine, &plain) >= 0) {
      snprintf(text, sizeof text,
               "From the rating, carried to this site by the model of the machine: thinner or warmer air fills the "
               "cylinders with less mass, and the receiver then takes longer.%s",
               a->rating_inconsistent
                   ? " The dimensions given do not reach the rating; the expectation is what they give."
                   : "");
      print_wrapped("  ", 2, text);
    }
  }
}

static void run_found(const assessment *a, const assessed_run *r)
{
  const visit *v = a->v;
  char t[SHOWN], u[SHOWN], w[SHOWN];
  printf("  From %s to %s in %s:", show(v, r->run->p_from_pa, "Pa", SHOW_READING, t),
         show(v, r->run->p_to_pa, "Pa", SHOW_READING, u), show_time(r->run->duration_s, w));
  printf(" free air delivery %s", show(v, r->found.delivery_m3_s, "m3/s", SHOW_READING, t));
  printf(" (standard uncertainty %s)\n", show(v, r->found.delivery_uncertainty_m3_s, "m3/s", SHOW_DIFFERENCE, u));
  printf("    The plain rule, volume times rise over time, would say %s: %s too much, since the gas heats.\n",
         show(v, r->found.plain_m3_s, "m3/s", SHOW_READING, t), show_percent(r->found.bias, u));
}

static int hidden(const freeair_diagnosis_finding *f)
{
  return f->reading == FREEAIR_EVIDENCE_AMBIENT || f->reading == FREEAIR_EVIDENCE_BAROMETER ||
         f->use == FREEAIR_DIAGNOSIS_NOT_APPLICABLE;
}

static void found(const assessment *a)
{
  const visit *v = a->v;
  char t[SHOWN], u[SHOWN];
  heading(2, "What was found");
  for (size_t i = 0; i < a->n_runs; i++) run_found(a, &a->run[i]);
  size_t rows = 0;
  for (size_t i = 0; i < a->n_findings; i++) rows += !hidden(&a->finding[i]);
  if (rows > 0) printf("  %-40s %14s %14s\n", "", "found", "if sound");
  for (size_t i = 0; i < a->n_findings; i++) {
    const freeair_diagnosis_finding *f = &a->finding[i];
    if (hidden(f)) continue;
    printf("  %-40s %14s %14s", freeair_evidence_title(FREEAIR_EVIDENCE_KIND_READING, f->reading),
           show_reading(a, f->reading, f->found, t), show_reading(a, f->reading, f->expected, u));
    if (f->use == FREEAIR_DIAGNOSIS_CONTRADICTS)
      printf("   CONTRADICTS the rest\n");
    else if (isnan(f->residual))
      printf("\n");
    else if (fabs(f->residual) < 2.0)
      printf("   as expected\n");
    else
      printf("   %s by %.0f standard deviations\n", f->residual > 0.0 ? "high" : "low", fabs(f->residual));
  }
  for (size_t i = 0; i < v->n_capacitors; i++) {
    const visit_capacitor *c = &v->capacitor[i];
    printf("  The %s capacitor is %s: %s", c->is_start ? "start" : "run",
           a->capacitor_verdict[i] == FREEAIR_VERDICT_MEETS   ? "within its limits"
           : a->capacitor_verdict[i] == FREEAIR_VERDICT_FAILS ? "OUT of its limits"
                                                              : "perhaps out of its limits; this meter cannot tell",
           show(v, c->measured_f, "F", SHOW_READING, t));
    printf(" where %s", show(v, c->minimum_f, "F", SHOW_READING, t));
    printf(" to %s is sound\n", show(v, c->maximum_f, "F", SHOW_READING, t));
  }
  if (a->supply_verdict >= 0)
    printf("  The supply is %s %s the nameplate: %s\n", show_percent(fabs(a->supply_deviation), t),
           a->supply_deviation < 0.0 ? "below" : "above",
           a->supply_verdict == FREEAIR_VERDICT_MEETS   ? "within 10 %"
           : a->supply_verdict == FREEAIR_VERDICT_FAILS ? "MORE than 10 % off"
                                                        : "near the limit of 10 %; this meter cannot tell");
  if (!isnan(a->slip)) {
    printf("  Belt slip from the two speeds: %s", show_percent(a->slip, t));
    printf(" (standard uncertainty %s)\n", show_percent(a->u_slip, u));
  }
  for (size_t i = 0; i < a->n_observations; i++)
    printf("  %s %s\n", a->answer[i] == FREEAIR_EVIDENCE_YES ? "seen:    " : "not seen:",
           freeair_evidence_title(FREEAIR_EVIDENCE_KIND_OBSERVATION, a->observation[i]));
}

static void log_found(const assessment *a)
{
  const visit *v = a->v;
  const freeair_duty_summary *s = &a->log_summary;
  char t[SHOWN], u[SHOWN], w[SHOWN];
  if (!a->has_log) return;
  printf("  The log: %s read, %d complete cycles\n", show_time(s->observed_s, t), (int)s->n_cycles);
  if (s->n_cycles > 0) {
    printf("    one cycle %s, loaded %s of the time", show_time(s->cycle_s, t), show_percent(s->duty, u));
    printf(", rising %s while loaded\n", show(v, s->load_slope_pa_s, "Pa/s", SHOW_DIFFERENCE, w));
    printf("    loads at %s", show(v, s->cut_in_pa, "Pa", SHOW_READING, t));
    printf(", unloads at %s\n", show(v, s->cut_out_pa, "Pa", SHOW_READING, u));
  }
  if (!isnan(s->draw_share)) {
    printf("    leaks and use take %s of what the machine can deliver", show_percent(s->draw_share, t));
    if (!isnan(s->draw_share_uncertainty))
      printf(" (standard uncertainty %s)", show_percent(s->draw_share_uncertainty, u));
    printf("\n");
  }
  if (s->findings & FREEAIR_DUTY_NEVER_CUTS_OUT)
    print_wrapped("    ", 4,
                  "LOADED ALL THE TIME and never reaching cut-out: more air goes than the machine makes. The log "
                  "alone does not say whether it makes too little or too much is taken.");
  else if (!isnan(s->draw_share) && s->draw_share < 0.1 && s->n_cycles > 0)
    printf("    A few percent is ordinary: not a fault.\n");
  if (s->findings & FREEAIR_DUTY_HAS_FROZEN)
    printf("    The logger stood still for part of it (%s left out).\n", show_time(s->missing_s, t));
  if (s->findings & FREEAIR_DUTY_HAS_GAPS) printf("    The log has gaps.\n");
  if (s->findings & FREEAIR_DUTY_FEW_CYCLES && s->n_cycles < 3 && !(s->findings & FREEAIR_DUTY_NEVER_CUTS_OUT))
    printf("    Fewer than three complete cycles: take the means with care.\n");
}

/* Not the same as "all is sound": what nobody looked at may still be wrong. */
static void proof(const assessment *a)
{
  const freeair_diagnosis_proof *p = &a->proof;
  char t[SHOWN], u[SHOWN], text[VISIT_TEXT], share[200] = "";
  if (a->v->repaired == FREEAIR_EVIDENCE_CAUSE_NONE) return;
  const char *cause = freeair_evidence_title(FREEAIR_EVIDENCE_KIND_CAUSE, a->v->repaired);
  if (!isnan(p->delivery))
    snprintf(share, sizeof share, " By the %s it makes %s of what it should; at least %.0f %% with a probability "
             "of %s.",
             p->reading == FREEAIR_EVIDENCE_TIME_FROM_EMPTY   ? "time from empty"
             : p->reading == FREEAIR_EVIDENCE_TIME_FROM_CUTIN ? "time from cut-in"
                                                              : "delivery",
             show_percent(p->delivery, t), 100.0 * a->limit, show_probability(p->probability_delivery, u));
  else if (p->delivers == FREEAIR_VERDICT_FAILS)
    snprintf(share, sizeof share, " It still levels off below cut-out.");
  else
    snprintf(share, sizeof share, " Without a pump-up test from the same start nothing is proved.");
  const char *says = "The repair is PROVED.";
  if (p->verdict == FREEAIR_VERDICT_CANNOT_TELL)
    says = "The repair is NOT PROVED YET: make the next checks, and the test again.";
  else if (p->verdict == FREEAIR_VERDICT_FAILS)
    says = p->gone == FREEAIR_VERDICT_MEETS
               ? "That cause is gone, and air is MISSING STILL: something else is wrong too."
               : "The repair is NOT PROVED: what was found speaks against it.";
  snprintf(text, sizeof text, "%s. That it is still there has a probability of %s, from even odds %s.%s %s", cause,
           show_probability(p->probability, t), show_probability(p->probability_even, u), share, says);
  print_wrapped("  Repaired: ", 12, text);
}

static void verdict(const assessment *a)
{
  char t[SHOWN], u[SHOWN], w[SHOWN], text[VISIT_TEXT];
  heading(3, "Verdict");
  if (a->n_runs > 0) {
    const assessed_run *r = &a->run[0];
    printf("  Delivery: %s\n", verdict_word(r->verdict));
    snprintf(
        text, sizeof text,
        "It makes %s of what a sound machine of this kind would make here today, standard uncertainty %s (test, "
        "rating "
        "and model together). That it makes at least %.0f %%, the least that counts as sound here, has a probability "
        "of %s.%s",
        show_percent(r->ratio, t), show_percent(r->u_ratio, u), 100.0 * a->limit,
        show_probability(r->probability_enough, w),
        r->run->service_valve_closed == FREEAIR_EVIDENCE_YES
            ? ""
            : " The service valve was not closed: what the system took meanwhile counts as missing here.");
    print_wrapped("  ", 2, text);
  }
  const freeair_diagnosis_summary *s = &a->summary;
  snprintf(text, sizeof text, "%s That nothing is wrong with machine or system has a probability of %s.",
           s->verdict == FREEAIR_VERDICT_MEETS   ? "Taken together: SOUND."
           : s->verdict == FREEAIR_VERDICT_FAILS ? "Taken together: SOMETHING IS WRONG."
                                                 : "Taken together: CANNOT TELL yet.",
           show_probability(s->probability_healthy, t));
  print_wrapped("  ", 2, text);
  for (size_t i = 0; i < a->n_findings; i++) {
    const freeair_diagnosis_finding *f = &a->finding[i];
    if (f->use != FREEAIR_DIAGNOSIS_CONTRADICTS) continue;
    snprintf(text, sizeof text,
             "%s reads %s; by all other evidence it would be about %s, %.1f standard deviations away. Read it "
             "again, with another instrument, before anything is opened.",
             freeair_evidence_title(FREEAIR_EVIDENCE_KIND_READING, f->reading),
             show_reading(a, f->reading, f->found, t), show_reading(a, f->reading, f->predicted, u),
             fabs(f->disagreement));
    print_wrapped("  Contradiction: ", 17, text);
  }
  proof(a);
}

static void reasons(const assessment *a, int32_t cause, int against)
{
  int shown = 0;
  char t[SHOWN], u[SHOWN], w[SHOWN], text[VISIT_TEXT];
  for (size_t i = 0; i < a->n_reasons && shown < REASONS_SHOWN; i++) {
    const freeair_diagnosis_reason *r = &a->reason[i];
    if (r->cause != cause || (r->log_odds < 0.0) != against || fabs(r->log_odds) < 0.3) continue;
    const double factor = exp(fabs(r->log_odds));
    const int told = isfinite(r->expected) && isfinite(r->predicted) && cause != FREEAIR_EVIDENCE_HEALTHY;
    char odds[40];
    snprintf(odds, sizeof odds,
             factor < 10.0     ? "%.1f times"
             : factor < 1000.0 ? "%.0f times"
                               : "over a thousand times",
             factor);
    if (r->reading == FREEAIR_EVIDENCE_DELIVERY && isnan(r->found))
      snprintf(text, sizeof text, "how the pressure rose, %s %s likely", odds, against ? "less" : "more");
    else if (r->reading > 0)
      snprintf(text, sizeof text, "%s %s%s%s%s%s%s, %s %s likely",
               freeair_evidence_title(FREEAIR_EVIDENCE_KIND_READING, r->reading),
               show_reading(a, r->reading, r->found, t), isnan(r->expected) ? "" : " (sound: ",
               isnan(r->expected) ? "" : show_reading(a, r->reading, r->expected, u),
               told ? ", with this cause: " : "", told ? show_reading(a, r->reading, r->predicted, w) : "",
               isnan(r->expected) ? "" : ")", odds, against ? "less" : "more");
    else
      snprintf(text, sizeof text, "%s%s, %s %s likely", r->answer == FREEAIR_EVIDENCE_NO ? "not seen: " : "",
               freeair_evidence_title(FREEAIR_EVIDENCE_KIND_OBSERVATION, r->observation), odds,
               against ? "less" : "more");
    print_wrapped(shown == 0 ? against ? "       against   " : "       for       " : "                 ", 17, text);
    shown++;
  }
}

static size_t causes_shown(const assessment *a)
{
  size_t n = 0;
  while (n < a->n_causes && n < CAUSES_SHOWN && (n == 0 || a->cause[n].probability > 0.03)) n++;
  return n;
}

/* What it costs now, where the use of air is known, and in money where the price of energy is. */
static void money(const assessment *a, const freeair_inference_effect *e)
{
  char t[SHOWN];
  if (isnan(e->waste_w) || e->waste_w <= 0.0) return;
  if (e->waste_w > a->point.motor_w) {
    printf("       now       cannot make the air that is used, running all the time\n");
    return;
  }
  printf("       now       wastes %s of electrical power", show(a->v, e->waste_w, "W", SHOW_DIFFERENCE, t));
  if (!isnan(e->cost)) printf(", %.0f %s a year", e->cost * 3600.0 * 8760.0, a->v->currency);
  putchar('\n');
}

static void causes(const assessment *a)
{
  char t[SHOWN], u[SHOWN];
  heading(4, "Likely causes");
  for (size_t i = 0; i < causes_shown(a); i++) {
    const freeair_diagnosis_cause *c = &a->cause[i];
    printf("  %zu. %-44s %s", i + 1, freeair_evidence_title(FREEAIR_EVIDENCE_KIND_CAUSE, c->cause),
           show_probability(c->probability, t));
    const freeair_inference_effect *e = i < a->n_effects ? &a->effect[i] : NULL;
    const int costs = !isnan(c->severity) && c->severity > 0.02 && c->cause != FREEAIR_EVIDENCE_HEALTHY;
    if (costs) {
      printf("   costs about %s of the delivery", show_percent(c->severity, t));
      if (e != NULL && !isnan(e->lost_low))
        printf(" (%.0f to %s)", 100.0 * e->lost_low, show_percent(e->lost_high, u));
      else if (!isnan(c->u_severity))
        printf(" (+- %s)", show_percent(c->u_severity, u));
    }
    putchar('\n');
    if (costs && e != NULL) money(a, e);
    reasons(a, c->cause, 0);
    reasons(a, c->cause, 1);
    if (c->group > 0 && c->check > 0) {
      for (size_t k = 0; k < i; k++)
        if (a->cause[k].group == c->group) {
          char text[VISIT_TEXT];
          snprintf(text, sizeof text, "not to be told from no. %zu by what was read; what splits them: %s", k + 1,
                   freeair_evidence_title(FREEAIR_EVIDENCE_KIND_CHECK, c->check));
          print_wrapped("       alike     ", 17, text);
          break;
        }
    }
  }
}

static void cautions(uint32_t mask, const char *label)
{
  for (uint32_t bit = 1; bit != 0; bit <<= 1)
    if (mask & bit) print_wrapped(label, 4, freeair_caution_text(bit));
}

static void checks(const assessment *a)
{
  char text[VISIT_TEXT];
  heading(5, "What to check next, in this order");
  size_t shown = 0;
  for (size_t i = 0; i < a->n_checks && shown < CHECKS_SHOWN; i++) {
    const freeair_diagnosis_check *c = &a->check[i];
    if (c->information < 0.01) continue;
    printf("  %zu. %s (about %.0f min%s)\n", ++shown, freeair_evidence_title(FREEAIR_EVIDENCE_KIND_CHECK, c->check),
           ceil(c->effort_s / 60.0), c->qualification ? "; for an electrically qualified person" : "");
    snprintf(text, sizeof text, "%s", freeair_evidence_text(FREEAIR_EVIDENCE_KIND_CHECK, c->check));
    print_wrapped("     ", 5, text);
  }
  if (shown == 0) printf("  Nothing that would change the picture.\n");
}

static void repair(const assessment *a)
{
  heading(6, "If a cause is confirmed");
  int any = 0;
  for (size_t i = 0; i < causes_shown(a) && i < 3; i++) {
    const freeair_diagnosis_cause *c = &a->cause[i];
    const char *remedy = freeair_evidence_remedy(c->cause);
    if (c->cause == FREEAIR_EVIDENCE_HEALTHY || c->cause == FREEAIR_EVIDENCE_OTHER || remedy[0] == '\0') continue;
    any = 1;
    printf("  %s\n", freeair_evidence_title(FREEAIR_EVIDENCE_KIND_CAUSE, c->cause));
    print_wrapped("     repair: ", 13, remedy);
    print_wrapped("     proof:  ", 13, freeair_evidence_proof(c->cause));
  }
  if (!any) printf("  Nothing to repair on this evidence.\n");
  heading(7, "How to prove the repair");
  print_wrapped(
      "  ", 2,
      "Run the same pump-up test from the same start: same pressures, same state of the receiver (soaked or just "
      "drawn down), service valve closed, receiver drained. Read ambient temperature and barometer again. Put the "
      "times before and after into this program and keep both records.");
}

void report_text(const assessment *a)
{
  head(a);
  expected(a);
  found(a);
  log_found(a);
  verdict(a);
  causes(a);
  checks(a);
  repair(a);
  heading(8, "Cautions");
  cautions(a->cautions, "  - ");
  print_wrapped("  - ", 4,
                "This report advises. The nameplate, the manual, local codes and licensed practice come first.");
}
