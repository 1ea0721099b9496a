// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/response/response_csv.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace howlmap::app {
namespace {

double interpolated(const std::vector<double>& hz, const std::vector<double>& db, double at) {
    const auto next = std::lower_bound(hz.begin(), hz.end(), at);
    if (next == hz.begin()) return db.front();
    if (next == hz.end()) return db.back();
    const auto i = static_cast<std::size_t>(next - hz.begin());
    const double t = std::log(at / hz[i - 1]) / std::log(hz[i] / hz[i - 1]);
    return db[i - 1] + t * (db[i] - db[i - 1]);
}

}  // namespace

std::string response_csv(const LoopResponse& response, const ResponseBand* band) {
    std::string text = "hz,gain_db,worst_phase_db,p05_db,p95_db\r\n";
    const bool counted = band && !band->hz.empty();
    for (std::size_t i = 0; i < response.hz.size(); ++i) {
        const double hz = response.hz[i];
        text += fmt::format("{:.3f},{:.2f},{:.2f},", hz, response.gain_db[i], response.worst_phase_db[i]);
        text += counted ? fmt::format("{:.2f},{:.2f}\r\n", interpolated(band->hz, band->p05_db, hz),
                                      interpolated(band->hz, band->p95_db, hz))
                        : ",\r\n";
    }
    return text;
}

}  // namespace howlmap::app
