// SPDX-License-Identifier: GPL-3.0-or-later
// The soundcheck panel as a player uses it: order, walk, recording, live sound, taps, log.
#include <QComboBox>
#include <QDialog>
#include <QDoubleSpinBox>
#include <QDropEvent>
#include <QLabel>
#include <QListView>
#include <QMimeData>
#include <QPushButton>
#include <QTableView>
#include <QTemporaryDir>
#include <cmath>
#include <memory>

#include "app/canvas/plan_view.h"
#include "app/document/analysis_service.h"
#include "app/document/response_service.h"
#include "app/document/trouble.h"
#include "app/panels/common/card.h"
#include "app/panels/inspector/inspector_panel.h"
#include "app/panels/soundcheck/cut_offer.h"
#include "app/panels/soundcheck/live_display.h"
#include "app/panels/soundcheck/live_page.h"
#include "app/panels/soundcheck/log_model.h"
#include "app/panels/soundcheck/recording_page.h"
#include "app/panels/soundcheck/ring_out_list.h"
#include "app/panels/soundcheck/soundcheck_panel.h"
#include "app/panels/soundcheck/tap_page.h"
#include "app/panels/soundcheck/walk_page.h"
#include "core/show/find.h"
#include "core/units/bands.h"
#include "tests/app/panels/editing/small_show.h"
#include "tests/support/registry.h"

using namespace howlmap;
using namespace howlmap::app;

namespace {

constexpr int kRate = 16000, kPatience = 20000;

Show stage() {
    Show show = test::small_show();
    show.tolerance.draws = 60;
    show.mixes[0].sends.push_back(Send{"fid", 94.0, {}});
    return show;
}

/// A howl that rises by 40 dB a second from -80 dBFS and is held at -10 dBFS.
std::vector<float> howl(double hz, double seconds) {
    std::vector<float> out(static_cast<std::size_t>(seconds * kRate));
    for (std::size_t i = 0; i < out.size(); ++i) {
        const double t = static_cast<double>(i) / kRate;
        out[i] = static_cast<float>(std::pow(10.0, std::min(-10.0, -80.0 + 40.0 * t) / 20.0) *
                                    std::sin(2.0 * M_PI * hz * t));
    }
    return out;
}

/// Three taps on a body with two modes.
std::vector<float> taps() {
    std::vector<float> out(static_cast<std::size_t>(2.5 * kRate));
    for (const double at : {0.3, 0.9, 1.5})
        for (const auto& [hz, q, size] : {std::tuple{275.0, 15.0, 0.3}, std::tuple{470.0, 28.0, 0.2}})
            for (auto i = static_cast<std::size_t>(at * kRate); i < out.size(); ++i) {
                const double t = static_cast<double>(i) / kRate - at;
                out[i] += static_cast<float>(size * std::exp(-M_PI * hz / q * t) * std::sin(2.0 * M_PI * hz * t));
            }
    for (std::size_t i = 0; i < out.size(); ++i) out[i] += 1e-5f * static_cast<float>(std::sin(0.7 * double(i * i)));
    return out;
}

template <class Widget>
Widget* find(QWidget& in, const char* name) {
    auto* found = in.findChild<Widget*>(QString::fromLatin1(name));
    if (!found) qFatal("no %s", name);
    return found;
}

}  // namespace

class TestSoundcheck : public QObject {
    Q_OBJECT
    QTemporaryDir folder_;
    struct Desk {
        Document document;
        Selection selection;
        AnalysisService analysis{document};
        Spotlight spotlight;
        ResponseService response{document, analysis, spotlight};
        PlanView plan{document, selection, analysis, nullptr};
        QStringList said;
        QList<Trouble> troubles;
        Workspace work{document,
                       selection,
                       analysis,
                       spotlight,
                       response,
                       plan,
                       [this](const QString& sentence) { said.append(sentence); },
                       [this](const Trouble& trouble) { troubles.append(trouble); }};
        SoundcheckPanel panel{work, nullptr};
    };
    std::unique_ptr<Desk> desk_;

    QString path(const char* name) const { return folder_.filePath(QLatin1StringView(name)); }
    QString written(const char* name, const std::vector<float>& samples) const {
        if (!write_mono(path(name).toStdString(), kRate, samples)) qFatal("cannot write");
        return path(name);
    }
    const Show& show() const { return desk_->document.show(); }
    int steps() const { return desk_->document.undo_stack().count(); }
    void await_order() {
        if (desk_->panel.order().model().rowCount() > 0 && desk_->analysis.counted()) return;
        QVERIFY(QSignalSpy(&desk_->panel.order(), &RingOutList::updated).wait(kPatience));
    }

  private Q_SLOTS:
    void init() {
        desk_ = std::make_unique<Desk>();
        desk_->document.replace(stage(), {}, false);
    }
    void cleanup() { desk_.reset(); }

    void the_order_is_that_of_the_draws_with_who_and_where() {
        QVERIFY(desk_->panel.order().view().isHidden());
        await_order();
        const auto& draws = desk_->analysis.result()->tolerance->first_ring;
        const RingOutModel& model = desk_->panel.order().model();
        QCOMPARE(model.rowCount(), static_cast<int>(draws.size()));
        for (int row = 0; row < model.rowCount(); ++row) {
            const BandProbability& band = *model.at(row);
            QCOMPARE(band.band_hz, draws[static_cast<std::size_t>(row)].band_hz);
            QCOMPARE(third_octave_of(band.hz), third_octave_of(band.band_hz));
            QCOMPARE(band.loudspeaker, std::string("w1"));
            QCOMPARE(band.mix, std::string("m1"));
            QVERIFY(find_by_id(show().inputs, band.input));
            QVERIFY(model.data(model.index(row), kWords).toString().contains(QStringLiteral("wedge 1")));
        }
    }

    void the_log_is_typed_and_every_change_is_one_step() {
        LogModel log(desk_->document);
        QSignalSpy refused(&log, &LogModel::refused);
        log.add();
        QCOMPARE(steps(), 1);
        QCOMPARE(log.rowCount(), 1);
        const auto type = [&](int column, const char* text) {
            return log.setData(log.index(0, column), QString::fromUtf8(text), Qt::EditRole);
        };
        QVERIFY(type(LogModel::hz, "2310,5 Hz"));
        QCOMPARE(show().soundcheck[0].hz, 2310.5);
        QCOMPARE(show().soundcheck[0].band, 2500.0);
        QVERIFY(type(LogModel::mix, "front"));
        QVERIFY(type(LogModel::input, "voice"));
        QVERIFY(type(LogModel::gain, "-4.5"));
        QVERIFY(type(LogModel::note, "second song"));
        QCOMPARE(steps(), 6);
        QCOMPARE(show().soundcheck[0].mix, std::string("m1"));
        QCOMPARE(show().soundcheck[0].input, std::string("vox"));
        QCOMPARE(show().soundcheck[0].gain_db, -4.5);
        QVERIFY(!type(LogModel::gain, "-400"));
        QVERIFY(!type(LogModel::mix, "nobody"));
        QVERIFY(!type(LogModel::hz, "high"));
        QCOMPARE(refused.count(), 3);
        QCOMPARE(steps(), 6);
        log.remove({log.index(0, 0), log.index(0, 3)});
        QVERIFY(show().soundcheck.empty());
        QCOMPARE(steps(), 7);
        desk_->document.undo();
        QCOMPARE(show().soundcheck[0].note, std::string("second song"));
        for (int i = 0; i < 6; ++i) desk_->document.undo();
        QVERIFY(show() == stage());
    }

    void rows_are_added_and_removed_by_the_buttons() {
        QPushButton* add = find<QPushButton>(desk_->panel, "add_log_row");
        add->click();
        add->click();
        QCOMPARE(show().soundcheck.size(), std::size_t{2});
        find<QTableView>(desk_->panel, "soundcheck_log")->selectRow(0);
        find<QPushButton>(desk_->panel, "remove_log_row")->click();
        QCOMPARE(show().soundcheck.size(), std::size_t{1});
        QCOMPARE(steps(), 3);
    }

    void a_howl_in_a_recording_is_named_suspected_and_cut_in_one_step() {
        await_order();
        const double hz = desk_->panel.order().model().at(0)->hz;
        RecordingPage& page = desk_->panel.recording();
        QSignalSpy suspected(&page, &RecordingPage::suspects_found), depth(&page.offer(), &CutOffer::suggested);
        page.load(written("howl.wav", howl(hz, 4.0)));
        QVERIFY(suspected.wait(kPatience));
        QCOMPARE(page.howls().size(), std::size_t{1});
        QVERIFY(std::abs(page.howls()[0].hz - hz) < 1.0);
        QVERIFY(!page.suspects().empty());
        QCOMPARE(page.suspects()[0].loudspeaker, std::string("w1"));
        if (depth.isEmpty()) QVERIFY(depth.wait(kPatience));
        const RingOutStep step = page.offer().step();
        QCOMPARE(step.mix, std::string("m1"));
        QVERIFY(step.cut_db < 0.0 && step.cut_db >= -12.0);
        find<QPushButton>(page, "log_and_cut")->click();
        QCOMPARE(steps(), 1);
        QCOMPARE(show().soundcheck.size(), std::size_t{1});
        QCOMPARE(show().soundcheck[0].mix, std::string("m1"));
        QCOMPARE(show().soundcheck[0].gain_db, step.cut_db);
        QCOMPARE(show().mixes[0].graphic_eq.at(third_octave_of(hz)), step.cut_db);
        QVERIFY(!desk_->said.isEmpty());
        desk_->document.undo();
        QVERIFY(show() == stage());
    }

    void a_recording_can_be_dropped_and_a_bad_file_loses_nothing() {
        RecordingPage& page = desk_->panel.recording();
        QMimeData data;
        data.setUrls({QUrl::fromLocalFile(written("dropped.wav", howl(700.0, 4.0)))});
        QSignalSpy loaded(&page, &RecordingPage::loaded);
        QDragEnterEvent enter({5, 5}, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
        QCoreApplication::sendEvent(&page, &enter);
        QVERIFY(enter.isAccepted());
        QDropEvent drop({5, 5}, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
        QCoreApplication::sendEvent(&page, &drop);
        QVERIFY(loaded.wait(kPatience));
        QCOMPARE(page.howls().size(), std::size_t{1});
        QFile bad(path("bad.wav"));
        QVERIFY(bad.open(QIODevice::WriteOnly) && bad.write("no sound") == 8);
        bad.close();
        page.load(bad.fileName());
        QVERIFY(loaded.wait(kPatience));
        QCOMPARE(desk_->troubles.size(), 1);
        QCOMPARE(desk_->troubles[0].file, bad.fileName());
        QCOMPARE(page.howls().size(), std::size_t{1});
        QVERIFY(show() == stage());
    }

    void a_search_can_be_given_up() {
        RecordingPage& page = desk_->panel.recording();
        page.load(written("long.wav", std::vector<float>(60 * kRate, 0.01f)));
        page.cancel();
        QTRY_VERIFY_WITH_TIMEOUT(!page.busy(), kPatience);
        QVERIFY(page.howls().empty());
    }

    void the_walk_begins_with_the_cautions_and_records_what_is_done() {
        await_order();
        WalkPage& walk = desk_->panel.walk();
        QVERIFY(find<QLabel>(walk, "walk_caution")->text().contains(QStringLiteral("ears protected")));
        const BandProbability first = *desk_->panel.order().model().at(0);
        walk.name_band(first);
        QCOMPARE(walk.stage(), WalkPage::Stage::caution);
        QPushButton* forward = find<QPushButton>(walk, "walk_forward");
        forward->click();
        QCOMPARE(walk.stage(), WalkPage::Stage::raise);
        QVERIFY(find<QLabel>(walk, "walk_step")->text().contains(QStringLiteral("wedge 1")));
        QSignalSpy depth(&walk.offer(), &CutOffer::suggested);
        forward->click();
        QCOMPARE(walk.stage(), WalkPage::Stage::name);
        QCOMPARE(find<QComboBox>(walk, "walk_band")->currentData().toInt(), third_octave_of(first.band_hz));
        QVERIFY(depth.wait(kPatience));
        const double cut = find<QDoubleSpinBox>(walk.offer(), "cut_depth")->value();
        QVERIFY(cut < 0.0);
        walk.offer().cut_and_log();
        QCOMPARE(walk.stage(), WalkPage::Stage::raise);
        QCOMPARE(walk.cuts(), 1);
        QCOMPARE(steps(), 1);
        QCOMPARE(show().soundcheck.at(0).band, first.band_hz);
        QCOMPARE(show().soundcheck.at(0).gain_db, cut);
        find<QPushButton>(walk, "walk_finish")->click();
        QCOMPARE(walk.stage(), WalkPage::Stage::finished);
    }

    void live_sound_names_the_ring_a_file_in_place_of_the_device() {
        LivePage& live = desk_->panel.live();
        QSignalSpy rings(&live, &LivePage::rings);
        auto reader = RecordingReader::open(written("live.wav", howl(630.0, 5.0)).toStdString());
        QVERIFY(reader.has_value());
        live.listen(std::make_unique<FileSource>(std::move(*reader), 0.0));
        QVERIFY(rings.wait(kPatience));
        QVERIFY(std::abs(rings[0][0].toDouble() - 630.0) < 1.0);
        QVERIFY(live.display().alarm());
        QVERIFY(live.display().headline().contains(QStringLiteral("630 Hz")));
        QVERIFY(live.display().headline().contains(QStringLiteral("D#5")));
        live.display().resize(600, 300);
        QVERIFY(!live.display().grab().isNull());
        QTRY_VERIFY_WITH_TIMEOUT(!live.listening(), kPatience);
        find<QPushButton>(live, "live_name")->click();  // the cautions come first, and the ring is not forgotten
        QCOMPARE(desk_->panel.walk().stage(), WalkPage::Stage::caution);
        QVERIFY(find<QLabel>(desk_->panel.walk(), "walk_step")->text().startsWith(QStringLiteral("630 Hz rings")));
        find<QPushButton>(desk_->panel.walk(), "walk_forward")->click();
        QCOMPARE(desk_->panel.walk().stage(), WalkPage::Stage::name);
        QVERIFY(std::abs(desk_->panel.walk().offer().step().hz - 630.0) < 1.0);
    }

    void without_a_device_a_sentence_says_so() {
        QString why;
        QVERIFY(!open_sound_input(99, &why));
        QVERIFY(why.contains(QStringLiteral("Everything else works")));
        if (sound_inputs().isEmpty())
            QCOMPARE(find<QLabel>(desk_->panel.live(), "live_words")->text(), no_sound_input_words());
    }

    void taps_become_modes_of_the_pickup_in_one_step() {
        TapPage& page = desk_->panel.tap();
        QSignalSpy analysed(&page, &TapPage::analysed);
        page.load(written("taps.wav", taps()));
        QVERIFY(analysed.wait(kPatience));
        QVERIFY(page.findings().has_value());
        QCOMPARE(page.findings()->taps, 3);
        QCOMPARE(page.input(), QStringLiteral("fid"));
        find<QPushButton>(page, "put_on_pickup")->click();
        QCOMPARE(steps(), 1);
        const auto& modes = pickup_of(*find_by_id(show().inputs, "fid"))->modes;
        QVERIFY(modes.size() >= 2);
        QVERIFY(std::abs(modes[0].hz / 275.0 - 1.0) < 0.005 && std::abs(modes[0].q / 15.0 - 1.0) < 0.1);
        QVERIFY(std::abs(modes[1].hz / 470.0 - 1.0) < 0.005 && std::abs(modes[1].q / 28.0 - 1.0) < 0.1);
        QVERIFY(!find<QPushButton>(page, "put_on_pickup")->isEnabled());
        desk_->document.undo();
        QVERIFY(show() == stage());
    }

    void taps_can_be_recorded() {
        TapPage& page = desk_->panel.tap();
        QSignalSpy analysed(&page, &TapPage::analysed);
        auto reader = RecordingReader::open(written("recorded.wav", taps()).toStdString());
        QVERIFY(reader.has_value());
        page.record(std::make_unique<FileSource>(std::move(*reader), 0.0));
        QVERIFY(analysed.wait(kPatience));
        QVERIFY(page.findings() && page.findings()->taps == 3);
    }

    void the_inspector_of_a_pickup_leads_to_the_taps() {
        InspectorPanel inspector(desk_->document, desk_->selection);
        desk_->selection.set({QStringLiteral("vox")});
        QVERIFY(!find<QPushButton>(inspector, "modes_from_taps")->isVisibleTo(&inspector));
        desk_->selection.set({QStringLiteral("fid")});
        QVERIFY(find<QPushButton>(inspector, "modes_from_taps")->isVisibleTo(&inspector));
        find<QPushButton>(inspector, "modes_from_taps")->click();
        auto* dialog = find<QDialog>(inspector, "tap_dialog");
        QCOMPARE(dialog->findChild<TapPage*>()->input(), QStringLiteral("fid"));
    }
};

HOWLMAP_TEST(TestSoundcheck)
#include "test_soundcheck.moc"
