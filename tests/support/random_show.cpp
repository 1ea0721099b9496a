// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/random_show.h"

#include <algorithm>
#include <numbers>

#include "core/show/names.h"
#include "core/units/bands.h"
#include "tests/support/random.h"

namespace howlmap::test {
namespace {

class ShowMaker {
  public:
    ShowMaker(std::uint64_t seed, const RandomShowOptions& options) : random_(seed), options_(options) {}

    Show make() {
        head();
        stage();
        many(show_.loudspeakers, 1, options_.most_loudspeakers, "spk", [&](auto& of) { fill(of); });
        many(show_.performers, 1, options_.most_others, "who", [&](auto& of) { fill(of); });
        many(show_.inputs, 1, options_.most_inputs, "in", [&](auto& of) { fill(of); });
        many(show_.mixes, 1, options_.most_mixes, "mix", [&](auto& of) { fill(of); });
        many(show_.backline, 0, options_.most_others, "amp", [&](auto& of) { fill(of); });
        many(show_.listeners, 0, options_.most_others, "ear", [&](auto& of) { fill(of); });
        many(show_.marks, 0, options_.most_others, "mark", [&](auto& of) { fill(of); });
        for (Performer& performer : show_.performers)
            if (anything(0.8)) performer.mix = random_.one_of(show_.mixes).id;
        soundcheck();
        show_.extras = extras();
        if (!options_.anything) make_a_loop();
        return std::move(show_);
    }

  private:
    // -- plain values --------------------------------------------------------------------------------------------
    bool anything(double usual) { return random_.chance(options_.anything ? 0.5 : usual); }

    /// A number of a range, or of the narrower one that a stage has.
    double number(const Range& range, double low, double high) {
        return options_.anything ? random_.in(range) : std::round(random_.between(low, high) * 100.0) / 100.0;
    }

    std::string text() {
        static const std::vector<std::string> words{"",           "fiddle",      "wedge l",         "Größe",
                                                    "\"quoted\"", "back\\slash", "tab\tnew\nline",  "音楽",
                                                    "\x01\x1f",   "/a~b",        "ends with space "};
        return random_.one_of(words);
    }

    Extras extras() {
        if (!options_.anything || !options_.unknown_keys || random_.chance(0.7)) return {};
        static const std::vector<std::string> values{"null",
                                                     "true",
                                                     "1.50",
                                                     "-0.0",
                                                     "\"text\"",
                                                     "[]",
                                                     "{}",
                                                     "[1, [2, {\"a\": 1e3}]]",
                                                     "{\"b\": 1, \"a\": [false, \"x\"]}",
                                                     "123456789012345678901234567890"};
        Extras out;
        for (int i = random_.whole(1, 3); i > 0; --i)
            out.emplace_back("x_" + std::to_string(i) + (random_.chance(0.2) ? "/~ü" : ""), random_.one_of(values));
        return out;
    }

    template <class E>
    E word() {
        return static_cast<E>(random_.whole(0, static_cast<int>(kWords<E>.size()) - 1));
    }

    Vec2 place() {
        if (options_.anything) return {random_.in(limits::kPosition), random_.in(limits::kPosition)};
        for (int tries = 0; tries < 200; ++tries) {
            const Vec2 at{number({}, -3.8, 3.8), number({}, 0.2, 4.8)};
            if (std::all_of(taken_.begin(), taken_.end(), [&](Vec2 other) { return length(other - at) >= 0.3; })) {
                taken_.push_back(at);
                return at;
            }
        }
        return {0.0, 2.5};
    }

    Vec3 place(double low, double high) {
        const Vec2 at = place();
        return {at.x, at.y, number(limits::kPosition, low, high)};
    }

    template <class T, class Fill>
    void many(std::vector<T>& list, int least, int most, const std::string& name, Fill fill) {
        list.resize(static_cast<std::size_t>(random_.whole(std::min(least, most), most)));
        for (std::size_t i = 0; i < list.size(); ++i) {
            list[i].id = name + "-" + std::to_string(i + 1);
            list[i].name = options_.anything ? text() : list[i].id;
            fill(list[i]);
            list[i].extras = extras();
        }
    }
    void many(std::vector<Mark>& list, int, int most, const std::string& name, auto fill) {
        list.resize(static_cast<std::size_t>(random_.whole(0, most)));
        for (std::size_t i = 0; i < list.size(); ++i) {
            list[i].id = name + "-" + std::to_string(i + 1);
            fill(list[i]);
            list[i].extras = extras();
        }
    }

    std::map<int, double> bands(int count, const Range& range, double low, double high) {
        std::map<int, double> out;
        for (int i = random_.whole(1, 5); i > 0; --i) out[random_.whole(0, count - 1)] = number(range, low, high);
        return out;
    }

    std::vector<double> rising(const Range& range, int most) {
        std::vector<double> out;
        for (int i = random_.whole(1, most); i > 0; --i) out.push_back(random_.in(range));
        std::sort(out.begin(), out.end());
        out.erase(std::unique(out.begin(), out.end()), out.end());
        return out;
    }

    Spectrum spectrum() {
        if (random_.chance(0.7)) return word<SpectrumName>();
        return bands(kThirdOctaves, limits::kLevel, -10.0, 0.0);
    }

    std::optional<HighPass> high_pass() {
        if (random_.chance(0.5)) return std::nullopt;
        return HighPass{number(limits::kHz, 40.0, 200.0), random_.whole_in(limits::kOrder), extras()};
    }

    std::vector<PeakFilter> filters(double low_db, double high_db) {
        std::vector<PeakFilter> out(static_cast<std::size_t>(random_.whole(0, 3)));
        for (PeakFilter& filter : out)
            filter = {number(limits::kHz, 60.0, 8000.0), number(limits::kQ, 0.7, 12.0),
                      number(limits::kGain, low_db, high_db), extras()};
        return out;
    }

    Response response() {
        Response out;
        if (random_.chance(0.4)) return out;
        if (random_.chance(0.7)) out.low_hz = number(limits::kHz, 40.0, 120.0);
        out.low_order = random_.whole(2, 4);
        if (random_.chance(0.5)) out.high_hz = number(limits::kHz, 8000.0, 18000.0);
        if (random_.chance(0.3))
            for (const double hz : rising(limits::kHz, 4))
                out.table.push_back({hz, number(limits::kGain, -6, 6), extras()});
        out.extras = extras();
        return out;
    }

    // -- directivities -------------------------------------------------------------------------------------------
    DirectivityTable table() {
        DirectivityTable out{{0.0, 60.0, 120.0, 180.0}, {250.0, 1000.0, 4000.0}, {}, extras()};
        if (options_.anything) {
            out.angles_deg = rising(limits::kTableAngle, 5);
            out.hz = rising(limits::kHz, 4);
        }
        for (std::size_t i = 0; i < out.hz.size(); ++i) {
            auto& row = out.db.emplace_back();
            double db = 0.0;
            for (std::size_t j = 0; j < out.angles_deg.size(); ++j) {
                row.push_back(options_.anything ? random_.in(limits::kGain) : db);
                db -= random_.between(0.5, 5.0) * static_cast<double>(i + 1);
            }
        }
        return out;
    }

    Directivity directivity() {
        switch (random_.whole(0, 3)) {
            case 0:
                return Omni{extras()};
            case 1:
                return Coverage{number(limits::kCoverageAngle, 50, 110), number(limits::kCoverageAngle, 40, 90),
                                number(limits::kSize, 0.2, 0.7),         number(limits::kSize, 0.2, 0.6),
                                number(limits::kCoverageFloor, 18, 30),  extras()};
            case 2: {
                const double sphere = number(limits::kSize, 0.12, 0.3);
                return CapOnSphere{sphere, std::max(sphere * random_.between(0.3, 0.9), 5e-324), extras()};
            }
            default:
                return table();
        }
    }

    Pattern pattern() {
        if (random_.chance(0.6)) return word<PatternName>();
        if (random_.chance(0.6)) return number(limits::kPatternNumber, 0.2, 1.0);
        return table();
    }

    // -- head and stage ------------------------------------------------------------------------------------------
    void head() {
        show_.title = options_.anything ? text() : "A random stage";
        if (!options_.anything) return air();
        show_.venue = text();
        show_.act = text();
        show_.notes = text();
        if (random_.chance(0.5)) show_.date = "2032-02-29";
        show_.contact = {text(), text(), text(), extras()};
        show_.display = {word<Units>(), extras()};
        show_.tolerance = {random_.whole_in(limits::kDraws),    random_.bits(),
                           random_.in(limits::kSpreadPosition), random_.in(limits::kSpreadAngle),
                           random_.in(limits::kSpreadGain),     random_.in(limits::kSpreadTemperature),
                           random_.in(limits::kSpreadAngle),    extras()};
        air();
    }

    void air() {
        show_.air = {number(limits::kTemperature, 5, 35), number(limits::kHumidity, 20, 90),
                     number(limits::kPressure, 95, 103), extras()};
        show_.system = {number(limits::kMilliseconds, 0, 5), options_.anything ? random_.in(limits::kGain) : 6.0,
                        options_.anything ? random_.in(limits::kLevel) : 95.0, extras()};
    }

    /// Corners at rising angles about a centre: never crosses itself.
    Outline star(Vec2 centre, double least, double most, int corners) {
        Outline out;
        for (int i = 0; i < corners; ++i) {
            const double angle = 2.0 * std::numbers::pi * (i + random_.between(0.0, 0.5)) / corners;
            const double radius = random_.between(least, most);
            out.push_back({centre.x + radius * std::cos(angle), centre.y + radius * std::sin(angle)});
        }
        return out;
    }

    Absorption absorption() {
        if (random_.chance(0.5)) return number(limits::kAbsorption, 0.02, 0.6);
        return bands(kOctaves, limits::kAbsorption, 0.02, 0.6);
    }

    std::optional<Surface> wall(double at) {
        if (!options_.walls || random_.chance(0.5)) return std::nullopt;
        return Surface{options_.anything ? random_.in(limits::kPosition) : at, absorption(), extras()};
    }

    void stage() {
        Stage& stage = show_.stage;
        stage.surfaces = {
            {0.0, absorption(), extras()}, wall(5.5), wall(-6.0), wall(-4.5), wall(4.5), wall(4.0), extras()};
        if (options_.room && random_.chance(0.5))
            stage.room = Room{number(limits::kVolume, 200, 3000), number(limits::kRt60, 0.4, 1.6), extras()};
        stage.extras = extras();
        if (!options_.anything) return;
        stage.outline = star({random_.between(-400, 400), random_.between(-400, 400)}, 1.0, 500.0, random_.whole(3, 9));
        stage.risers.resize(static_cast<std::size_t>(random_.whole(0, 2)));
        for (std::size_t i = 0; i < stage.risers.size(); ++i)
            stage.risers[i] = {"riser-" + std::to_string(i + 1), text(), star({0, 3}, 0.5, 2.0, random_.whole(3, 6)),
                               random_.in(limits::kSize), extras()};
    }

    // -- objects -------------------------------------------------------------------------------------------------
    void fill(Loudspeaker& of) {
        of.kind = word<LoudspeakerKind>();
        of.position = place(0.2, 1.0);
        of.aim = {number(limits::kAngle, 0, 360), number(limits::kAngle, 0, 60),
                  options_.anything ? random_.in(limits::kAngle) : 0.0};
        of.trim_db = number(limits::kGain, -3, 3);
        of.delay_ms = number(limits::kMilliseconds, 0, 5);
        of.polarity = word<Polarity>();
        of.response = response();
        of.directivity = directivity();
        if (random_.chance(0.3)) of.max_spl_db = number(limits::kLevel, 115, 130);
        if (options_.anything) of.preset = text(), of.notes = text();
    }

    Transducer transducer() {
        if (random_.chance(0.5)) return Microphone{pattern(), random_.chance(0.1), response(), extras()};
        if (options_.lines && random_.chance(0.2)) return Line{};
        Pickup pickup{number(limits::kGain, 8, 24),
                      number(limits::kGain, -18, -8),
                      random_.chance(0.3),
                      number(limits::kGain, 5, 12),
                      {},
                      extras()};
        for (int i = random_.whole(0, 3); i > 0; --i)
            pickup.modes.push_back({number(limits::kHz, 80, 2500), number(limits::kQ, 3, 30),
                                    number(limits::kGain, -6, 6), random_.chance(0.3),
                                    options_.anything ? text() : "mode", extras()});
        return pickup;
    }

    void fill(Input& of) {
        of.channel = options_.anything ? random_.whole_in(limits::kNumber) : ++channel_;
        of.transducer = transducer();
        of.has_position = !is_line(of) || random_.chance(0.5);
        if (of.has_position) of.position = place(0.8, 1.8);
        of.aim = {number(limits::kAngle, 0, 360), number(limits::kAngle, -40, 20), 0.0};
        of.source_spl_db = number(limits::kLevel, 88, 104);
        if (anything(0.9)) of.performer = random_.one_of(show_.performers).id;
        of.polarity = word<Polarity>();
        of.high_pass = high_pass();
        of.equaliser = filters(-6, 3);
        of.spectrum = spectrum();
        of.phantom = random_.chance(0.5);
        of.di = random_.chance(0.5);
        if (options_.anything) of.stand = text(), of.notes = text();
    }

    void fill(Performer& of) {
        of.position = place();
        of.ear_height_m = number(limits::kSize, 1.2, 1.8);
        of.yaw_deg = number(limits::kAngle, 0, 360);
        of.hears = options_.anything ? word<Hears>() : random_.chance(0.8) ? Hears::loudspeakers : Hears::in_ear;
        of.seal_db = number(limits::kGain, 15, 30);
        if (random_.chance(0.5)) of.own_acoustic_dba = number(limits::kLevel, 70, 95);
        if (options_.anything) of.notes = text();
    }

    void fill(Mix& of) {
        of.number = options_.anything ? random_.whole_in(limits::kNumber) : ++mix_;
        for (const Loudspeaker& loudspeaker : show_.loudspeakers)
            if (anything(0.4)) of.loudspeakers.push_back(loudspeaker.id);
        for (const Input& input : show_.inputs)
            if (anything(0.6)) of.sends.push_back({input.id, number(limits::kLevel, 82, 104), extras()});
        if (random_.chance(0.5)) of.graphic_eq = bands(kThirdOctaves, limits::kGain, -12, 3);
        of.notches = filters(-15, -3);
        of.high_pass = high_pass();
        of.polarity = word<Polarity>();
        of.delay_ms = number(limits::kMilliseconds, 0, 3);
    }

    void fill(Backline& of) {
        of.kind = options_.anything ? text() : "amplifier";
        of.position = place(0.3, 1.0);
        of.level_1m_dba = number(limits::kLevel, 70, 95);
        of.spectrum = spectrum();
    }

    void fill(Listener& of) {
        of.position = {number(limits::kPosition, -5, 5), number(limits::kPosition, -12, -2),
                       number(limits::kPosition, 1, 2)};
    }

    void fill(Mark& of) {
        of.kind = random_.pick<const char*>({"power", "di_box", "stage_box", "riser_label", "note", "rug"});
        of.position = place();
        of.yaw_deg = number(limits::kAngle, 0, 360);
        if (options_.anything) of.text = text();
    }

    void soundcheck() {
        for (int i = random_.whole(0, options_.anything ? 3 : 0); i > 0; --i)
            show_.soundcheck.push_back({random_.in(limits::kHz), random_.one_of(kNominalThirdOctaves),
                                        random_.chance(0.5) ? random_.one_of(show_.inputs).id : "",
                                        random_.chance(0.5) ? random_.one_of(show_.mixes).id : "", text(),
                                        random_.in(limits::kGain), text(), text(), extras()});
    }

    /// The first input is heard in the first loudspeaker, and is no line.
    void make_a_loop() {
        Input& input = show_.inputs.front();
        if (is_line(input)) {
            input.transducer = Microphone{};
            if (!input.has_position) input.position = place(0.8, 1.8);
            input.has_position = true;
        }
        Mix& mix = show_.mixes.front();
        if (mix.loudspeakers.empty()) mix.loudspeakers.push_back(show_.loudspeakers.front().id);
        const bool sent =
            std::any_of(mix.sends.begin(), mix.sends.end(), [&](const Send& send) { return send.input == input.id; });
        if (!sent) mix.sends.insert(mix.sends.begin(), {input.id, 95.0, {}});
    }

    Random random_;
    RandomShowOptions options_;
    Show show_;
    std::vector<Vec2> taken_;
    int channel_ = 0, mix_ = 0;
};

}  // namespace

Show random_show(std::uint64_t seed, const RandomShowOptions& options) { return ShowMaker(seed, options).make(); }

rc::Gen<Show> random_shows(const RandomShowOptions& options) {
    const auto size = rc::gen::inRange(1, 9);
    return rc::gen::map(rc::gen::pair(rc::gen::arbitrary<std::uint64_t>(), size),
                        [options](const std::pair<std::uint64_t, int>& drawn) {
                            RandomShowOptions smaller = options;
                            smaller.most_inputs = std::min(options.most_inputs, drawn.second);
                            smaller.most_loudspeakers = std::min(options.most_loudspeakers, drawn.second);
                            smaller.most_mixes = std::min(options.most_mixes, drawn.second);
                            smaller.most_others = std::min(options.most_others, drawn.second);
                            return random_show(drawn.first, smaller);
                        });
}

}  // namespace howlmap::test
