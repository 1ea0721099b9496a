// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/a/translated.h"
std::string declared(const char* english) { return translate("beta", english); }
