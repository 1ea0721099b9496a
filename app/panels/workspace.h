// SPDX-License-Identifier: GPL-3.0-or-later
// What every panel is given. Lives longer than any of them.
#pragma once
#include <QString>
#include <functional>

namespace howlmap::app {

class AnalysisService;
class Document;
class PlanView;
class ResponseService;
class Selection;
class Spotlight;
struct Trouble;

struct Workspace {
    Document& document;
    Selection& selection;
    AnalysisService& analysis;
    Spotlight& spotlight;
    ResponseService& response;
    PlanView& plan;
    std::function<void(const QString&)> say;     ///< one sentence about what just happened, in the status bar
    std::function<void(const Trouble&)> report;  ///< something could not be done: asks for attention
};

}  // namespace howlmap::app
