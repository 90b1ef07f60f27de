/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_INTERNAL_ARRAY_H
#define FREEAIR_INTERNAL_ARRAY_H

#define FREEAIR__COUNT(a) (sizeof(a) / sizeof((a)[0]))

#endif
