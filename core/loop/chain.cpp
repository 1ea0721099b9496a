// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/loop/chain.h"

#include "core/geometry/pose.h"
#include "core/loop/divided.h"
#include "core/units/level.h"

namespace howlmap {
namespace {
double sign_of(Polarity polarity) { return polarity == Polarity::inverted ? -1.0 : 1.0; }

Filter transducer_response(const Response& response) {
    Filter filter;
    if (response.low_hz) filter.append(butterworth_high_pass(*response.low_hz, response.low_order));
    if (response.high_hz) filter.append(butterworth_low_pass(*response.high_hz, response.high_order));
    for (const ResponsePoint& point : response.table) {
        filter.table_hz.push_back(point.hz);
        filter.table_db.push_back(point.db);
    }
    return filter;
}
}  // namespace

Filter loudspeaker_response(const Loudspeaker& loudspeaker) {
    Filter filter = transducer_response(loudspeaker.response);
    filter.gain = sign_of(loudspeaker.polarity) * db_to_ratio(loudspeaker.trim_db);
    filter.delay_s = loudspeaker.delay_ms / 1000.0;
    return filter;
}

Filter input_chain(const Input& input) {
    Filter filter;
    filter.gain = sign_of(input.polarity);
    if (input.high_pass) filter.append(butterworth_high_pass(input.high_pass->hz, input.high_pass->order));
    for (const PeakFilter& band : input.equaliser) filter.append(peaking(band));
    return filter;
}

Filter mix_chain(const Mix& mix) {
    Filter filter;
    filter.gain = sign_of(mix.polarity);
    filter.delay_s = mix.delay_ms / 1000.0;
    if (mix.high_pass) filter.append(butterworth_high_pass(mix.high_pass->hz, mix.high_pass->order));
    for (const auto& [band, gain_db] : mix.graphic_eq)
        if (gain_db != 0.0) filter.append(graphic_band(band, gain_db));
    for (const PeakFilter& notch : mix.notches) filter.append(peaking(notch));
    return filter;
}

double send_gain(double level_db, double source_spl_db) { return db_to_ratio(level_db - source_spl_db); }

Complex BodyBank::at(double hz) const {
    Complex sum = baseline;
    for (const Mode& mode : modes) {
        const double u = hz / mode.hz;
        // (j u/Q) / (1 - u^2 + j u/Q), both sides times Q, which may be next to 0
        sum += mode.gain * divided({0.0, u}, {mode.q * (1.0 - u * u), u});
    }
    return scale * sum;
}

BodyBank body_bank(const Pickup& pickup) {
    BodyBank bank{db_to_ratio(-pickup.isolation_db), db_to_ratio(pickup.baseline_db), {}};
    for (const BodyMode& mode : pickup.modes) {
        const bool covered = mode.air && pickup.holes_covered;
        bank.modes.push_back({mode.hz, covered ? mode.q / 2.0 : mode.q,
                              db_to_ratio(covered ? mode.gain_db - pickup.cover_db : mode.gain_db)});
    }
    return bank;
}

InputResponse::InputResponse(const Input& input) {
    if (const Microphone* microphone = microphone_of(input)) {
        filter_ = transducer_response(microphone->response);
        if (microphone->cupped) filter_.append(peaking(1600.0, 1.0, 5.0));
    }
    if (const Pickup* pickup = pickup_of(input)) body_ = body_bank(*pickup);
}

double InputResponse::turns(double hz) const {
    return body_ ? std::arg(body_->at(hz)) / (2.0 * kPi) : filter_.section_turns(hz);
}

}  // namespace howlmap
