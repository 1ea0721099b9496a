// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
inline std::string t(const char* english) { return translate("alpha", english); }
template <class... Args>
std::string f(const char* english, const Args&... args) { return filled(t(english), args...); }
std::string declared(const char* english);
