// SPDX-License-Identifier: GPL-3.0-or-later
// Sentences for players are written here in English; the program that shows them may install a translator.
#pragma once
#include <functional>
#include <string>

namespace howlmap {

/// The text in the user's language: the English itself while no translator is installed. Named so that the usual tools
/// for collecting translatable texts find its calls. Placeholders are fmt's {}.
std::string translate(const char* context, const char* english);

/// Installs (or with an empty function removes) the translator. Call before other threads start.
void set_translator(std::function<std::string(const char* context, const char* english)> translator);

/// The decimal mark of sentences and figures that people read; '.' until told otherwise. Call before other threads
/// start.
void set_decimal_mark(char mark);
/// The mark in force in this thread.
char decimal_mark();

/// As long as one lives, figures made in this thread have points: for lists that machines read, too.
class PointsInFigures {
  public:
    PointsInFigures();
    ~PointsInFigures();
    PointsInFigures(const PointsInFigures&) = delete;
    PointsInFigures& operator=(const PointsInFigures&) = delete;
};

}  // namespace howlmap
