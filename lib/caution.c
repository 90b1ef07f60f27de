/* SPDX-License-Identifier: MIT */
#include <freeair/caution.h>

#include "internal/array.h"

static const struct {
  uint32_t bit;
  const char *name;
  const char *text;
} table[] = {
    {FREEAIR_CAUTION_ISOLATE, "FREEAIR_CAUTION_ISOLATE",
     "Isolate the machine, lock it out and tag it, and try to start it, before touching it; pressure "
     "switches start motors without warning."},
    {FREEAIR_CAUTION_DEPRESSURISE, "FREEAIR_CAUTION_DEPRESSURISE",
     "Let the pressure down to zero on a gauge you trust, interstage and discharge line included, before "
     "opening anything."},
    {FREEAIR_CAUTION_STORED_ENERGY, "FREEAIR_CAUTION_STORED_ENERGY",
     "A receiver under pressure holds energy like a charge of explosive; never exceed the pressure stamped "
     "on the vessel."},
    {FREEAIR_CAUTION_RELIEF_VALVE, "FREEAIR_CAUTION_RELIEF_VALVE",
     "Never plug, reset or weaken a relief valve; replace one that leaks or lifts early with one of the same "
     "set pressure and capacity."},
    {FREEAIR_CAUTION_ROTATING, "FREEAIR_CAUTION_ROTATING",
     "Never run the machine with the belt guard off; lock it out before reaching near belts, pulleys or the "
     "flywheel."},
    {FREEAIR_CAUTION_VESSEL, "FREEAIR_CAUTION_VESSEL",
     "Do not weld, drill or judge a pressure vessel on a calculation: local codes and the authority's "
     "inspector decide."},
    {FREEAIR_CAUTION_HOT, "FREEAIR_CAUTION_HOT",
     "Heads, discharge pipes and coolers burn skin; let them cool or wear gloves made for it."},
    {FREEAIR_CAUTION_CAPACITOR, "FREEAIR_CAUTION_CAPACITOR",
     "A capacitor can kill after the power is off: a qualified person isolates it, discharges it through a "
     "resistor and proves it dead with a meter before it is touched."},
    {FREEAIR_CAUTION_LIVE, "FREEAIR_CAUTION_LIVE",
     "Measurements on live parts are for qualified people with rated meters, under local electrical rules."},
    {FREEAIR_CAUTION_OIL_MIST, "FREEAIR_CAUTION_OIL_MIST",
     "Oil mist and carbon can ignite in a very hot discharge; stop and find out why it is hot."},
    {FREEAIR_CAUTION_LIFTING, "FREEAIR_CAUTION_LIFTING",
     "Heads and motors are heavy; lift with help or with tackle."},
    {FREEAIR_CAUTION_PROTECTION, "FREEAIR_CAUTION_PROTECTION",
     "Wear eye, hearing, hand and foot protection."},
    {FREEAIR_CAUTION_BREATHING, "FREEAIR_CAUTION_BREATHING",
     "Air for breathing is another matter altogether, with rules of its own."},
    {FREEAIR_CAUTION_BLOWING, "FREEAIR_CAUTION_BLOWING",
     "Air from a blow gun or a broken hose injures; restrain hoses and keep to the pressure that local rules "
     "allow."},
};

const char *freeair_caution_text(uint32_t caution)
{
  for (size_t i = 0; i < FREEAIR__COUNT(table); i++)
    if (table[i].bit == caution) return table[i].text;
  return "";
}

const char *freeair_caution_name(uint32_t caution)
{
  for (size_t i = 0; i < FREEAIR__COUNT(table); i++)
    if (table[i].bit == caution) return table[i].name;
  return "";
}
