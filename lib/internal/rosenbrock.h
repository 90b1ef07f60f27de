/* SPDX-License-Identifier: MIT */
/* The linearly implicit pair that both crank angle and receiver step by. */
#ifndef FREEAIR_INTERNAL_ROSENBROCK_H
#define FREEAIR_INTERNAL_ROSENBROCK_H

/* L-stable Rosenbrock method of order 4(3) with four stages and three evaluations, in the
 * form that needs no product with the Jacobian (Hairer and Wanner, Solving
 * Ordinary Differential Equations II, section IV.7, table 7.2, and its
 * implementation notes). */
static const double gamma_ = 0.57282;
static const double a21 = 2.0;
static const double a31 = 1.867943637803922;
static const double a32 = 0.2344449711399156;
static const double c21 = -7.137615036412310;
static const double c31 = 2.580708087951457;
static const double c32 = 0.6515950076447975;
static const double c41 = -2.137148994382534;
static const double c42 = -0.3214669691237626;
static const double c43 = -0.6949742501781779;
static const double b1 = 2.255570073418735;
static const double b2 = 0.2870493262186792;
static const double b3 = 0.4353179431840180;
static const double b4 = 1.093502252409163;
static const double e1 = -0.2815431932141155;
static const double e2 = -0.07276199124934920;
static const double e3 = -0.1082196201495311;
static const double e4 = -1.093502252409163;
static const double alpha2 = 1.14564;
static const double alpha3 = 0.6552168638155900;
static const double d1 = 0.57282;
static const double d2 = -1.769193891319233;
static const double d3 = 0.7592633437920482;
static const double d4 = -0.1049021087100450;

#endif
