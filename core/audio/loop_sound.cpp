// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/audio/loop_sound.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <set>

#include "core/audio/loop_engine.h"
#include "core/loop/stability.h"
#include "core/show/find.h"
#include "core/units/level.h"

namespace howlmap {
namespace {

constexpr double kReference = 20e-6;   // Pa
constexpr double kHeadroom_db = 12.0;  // of an amplifier whose greatest level is not known: estimate, no source
constexpr double kOwnNoise_db = 20.0;  // SPL of an input's own noise: common practice, no source
constexpr float kPeak = 0.5f;          // of full scale, -6 dB
constexpr double kFade_s = 0.5;
constexpr std::size_t kMostChannels = 16;  // inputs and mixes

double pascals(double spl) { return kReference * db_to_ratio(spl); }

// Keeps the sends of the inputs and mixes that matter most.
Show reduced(const Show& show, const Stability& stability) {
    std::set<std::string> inputs, mixes;
    for (const PairFigure& pair : stability.pairs) {
        if (inputs.size() < kMostChannels) inputs.insert(pair.input);
        if (mixes.size() < kMostChannels) mixes.insert(pair.mix);
    }
    Show out = show;
    for (Mix& mix : out.mixes)
        std::erase_if(mix.sends,
                      [&](const Send& send) { return !mixes.contains(mix.id) || !inputs.contains(send.input); });
    return out;
}

double greatest_level(const Show& show, const Mix& mix) {
    double send = -60.0;
    for (const Send& s : mix.sends) send = std::max(send, s.level_db);
    std::optional<double> held;
    for (const std::string& id : mix.loudspeakers)
        if (const auto* l = find_by_id(show.loudspeakers, id); l && l->max_spl_db)
            held = std::min(held.value_or(*l->max_spl_db), *l->max_spl_db);
    return held.value_or(send + kHeadroom_db);
}

// Greatest rms over 0.4 s, the time weighting of loudness meters (ITU-R BS.1770: blocks of 400 ms).
double loudest_rms(const std::vector<float>& sound, double rate_hz) {
    const std::size_t length = std::min(sound.size(), static_cast<std::size_t>(0.4 * rate_hz));
    double sum = 0.0, most = 0.0;
    for (std::size_t i = 0; i < sound.size(); ++i) {
        sum += static_cast<double>(sound[i]) * sound[i];
        if (i >= length) sum -= static_cast<double>(sound[i - length]) * sound[i - length];
        most = std::max(most, sum);
    }
    return length > 0 ? std::sqrt(most / static_cast<double>(length)) : 0.0;
}

}  // namespace

struct LoopSound::State {
    Show show;  // first: the model refers to it
    LoopModel model;
    LoopKernels kernels;
    HearOptions options;
    std::vector<double> ceilings;
    double loudest = 1.0;  // Pa: the highest ceiling
    int source_input = 0;
    std::optional<LoopEngine> engine;
    std::size_t source_at = 0, played = 0;
    std::uint64_t noise = 0x9E3779B97F4A7C15u;
    std::vector<float> source, extra, heard;
    std::size_t heard_at = 0;  // samples of `heard` already handed out

    explicit State(Show kept) : show(std::move(kept)), model(show) {}

    void choose_input(const Stability& stability);
    void scale_source();
    void find_ceilings();
    void step();
    float next_noise(float size);
};

void LoopSound::State::choose_input(const Stability& stability) {
    std::string wanted = options.input;
    if (wanted.empty() && !stability.rings.empty()) wanted = stability.rings.front().strongest_source;
    for (std::size_t c = 0; c < model.inputs().size(); ++c)
        if (show.inputs[static_cast<std::size_t>(model.inputs()[c].index)].id == wanted)
            source_input = static_cast<int>(c);
    options.input =
        show.inputs[static_cast<std::size_t>(model.inputs()[static_cast<std::size_t>(source_input)].index)].id;
}

void LoopSound::State::scale_source() {
    const Input& input = *find_by_id(show.inputs, options.input);
    if (options.source.empty()) options.source = built_in_phrase(input.spectrum, options.seconds, options.rate_hz);
    const double rms = loudest_rms(options.source, options.rate_hz);
    const auto scale = static_cast<float>(rms > 0.0 ? pascals(input.source_spl_db) / rms : 0.0);
    for (float& x : options.source) x *= scale;
}

void LoopSound::State::find_ceilings() {
    for (const LoopModel::Bus& bus : model.buses())
        ceilings.push_back(std::numbers::sqrt2 *
                           pascals(greatest_level(show, show.mixes[static_cast<std::size_t>(bus.index)])));
    loudest = *std::max_element(ceilings.begin(), ceilings.end());
}

float LoopSound::State::next_noise(float size) {
    noise ^= noise << 13, noise ^= noise >> 7,
        noise ^= noise << 17;  // xorshift64: G. Marsaglia, J. Stat. Software 8(14), 2003
    return size * static_cast<float>(static_cast<double>(noise >> 11) * 0x1p-52 - 1.0);
}

void LoopSound::State::step() {
    const auto hiss = static_cast<float>(std::numbers::sqrt3 * pascals(kOwnNoise_db));
    for (std::size_t i = 0; i < source.size(); ++i) {
        source[i] = source_at < options.source.size() ? options.source[source_at++] : 0.0f;
        extra[i] = next_noise(hiss);
    }
    engine->step(source, extra, heard);
    const double fade = kFade_s * options.rate_hz;
    for (float& x : heard) {
        const double along = std::min(1.0, static_cast<double>(played++) / fade);
        const auto gain = static_cast<float>(0.5 - 0.5 * std::cos(std::numbers::pi * along));
        x = gain * kPeak * std::tanh(x / static_cast<float>(loudest));
    }
    heard_at = 0;
}

LoopSound::LoopSound(std::unique_ptr<State> state) : state_(std::move(state)) {}
LoopSound::LoopSound(LoopSound&&) noexcept = default;
LoopSound& LoopSound::operator=(LoopSound&&) noexcept = default;
LoopSound::~LoopSound() = default;

std::optional<LoopSound> LoopSound::prepare(const Show& show, HearOptions options, const Job& job) {
    const Stability stability = stability_of(show, true, job);
    auto state = std::make_unique<State>(reduced(show, stability));
    if (job.cancelled() || state->model.empty()) return std::nullopt;
    job.report(0.2);
    state->options = std::move(options);
    std::vector<double> exact;
    for (const Ring& ring : stability.rings) exact.push_back(ring.hz);
    state->kernels = loop_kernels(state->model, state->options.rate_hz, std::move(exact), job);
    if (job.cancelled()) return std::nullopt;
    state->choose_input(stability);
    state->scale_source();
    state->find_ceilings();
    state->engine.emplace(state->kernels, state->model.sends(), state->ceilings, state->source_input);
    const std::size_t n = state->kernels.block;
    state->source.resize(n), state->extra.resize(n), state->heard.resize(n);
    state->heard_at = n;
    LoopSound out(std::move(state));
    out.set_raise_db(out.state_->options.raise_db);
    job.report(1.0);
    return out;
}

double LoopSound::rate_hz() const { return state_->options.rate_hz; }
double LoopSound::seconds() const { return static_cast<double>(state_->options.source.size()) / rate_hz() + 3.0; }
const std::string& LoopSound::input() const { return state_->options.input; }

void LoopSound::set_raise_db(double db) {
    state_->options.raise_db = db;
    state_->engine->set_gain(db_to_ratio(db));
}

void LoopSound::play(std::span<float> out) {
    for (std::size_t i = 0; i < out.size();) {
        if (state_->heard_at == state_->heard.size()) state_->step();
        const std::size_t count = std::min(out.size() - i, state_->heard.size() - state_->heard_at);
        std::copy_n(state_->heard.begin() + static_cast<std::ptrdiff_t>(state_->heard_at), count,
                    out.begin() + static_cast<std::ptrdiff_t>(i));
        state_->heard_at += count, i += count;
    }
}

std::optional<LoopProbe> LoopSound::measure(const Job& job) const {
    return probe_loops(state_->kernels, state_->model.sends() * db_to_ratio(state_->options.raise_db), job);
}

}  // namespace howlmap
