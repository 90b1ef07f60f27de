/* SPDX-License-Identifier: MIT */
#include <freeair/version.h>

#define TEXT_OF(number) #number
#define DOTTED(major, minor, patch) TEXT_OF(major) "." TEXT_OF(minor) "." TEXT_OF(patch)

uint32_t freeair_version_number(void)
{
  return FREEAIR_VERSION_NUMBER;
}

const char *freeair_version_text(void)
{
  return DOTTED(FREEAIR_VERSION_MAJOR, FREEAIR_VERSION_MINOR, FREEAIR_VERSION_PATCH);
}
