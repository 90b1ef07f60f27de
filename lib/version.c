/* SPDX-License-Identifier: MIT */
#include <freeair/version.h>

#define TEXT_OF(x) #x
#define TEXT(x) TEXT_OF(x)

uint32_t freeair_version_number(void)
{
  return FREEAIR_VERSION_NUMBER;
}

const char *freeair_version_text(void)
{
  return TEXT(FREEAIR_VERSION_MAJOR) "." TEXT(FREEAIR_VERSION_MINOR) "." TEXT(FREEAIR_VERSION_PATCH);
}
