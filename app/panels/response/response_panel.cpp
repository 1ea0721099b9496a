// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/response/response_panel.h"

#include <QComboBox>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QLabel>
#include <QMenu>
#include <QStackedWidget>
#include <QToolButton>

#include "app/document/analysis_service.h"
#include "app/document/document.h"
#include "app/document/file_names.h"
#include "app/document/response_service.h"
#include "app/document/spotlight.h"
#include "app/document/trouble.h"
#include "app/panels/response/curve_choice.h"
#include "app/panels/response/fader_bank.h"
#include "app/panels/response/filter_handles.h"
#include "app/panels/response/mix_edits.h"
#include "app/panels/response/polarity_list.h"
#include "app/panels/response/response_csv.h"
#include "app/panels/response/response_plot.h"
#include "app/settings/figures.h"
#include "app/settings/theme.h"
#include "core/file/write.h"
#include "core/report/words.h"
#include "core/show/find.h"

namespace howlmap::app {

ResponsePanel::ResponsePanel(const Workspace& workspace, QWidget* parent)
    : QWidget(parent),
      work_(workspace),
      plot_(new ResponsePlot(this)),
      faders_(new FaderBank(this)),
      handles_(new FilterHandles(workspace.document, *plot_)),
      below_(new QStackedWidget(this)),
      mixes_(new QComboBox(this)),
      reading_(new QLabel(this)) {
    reading_->setFont(tabular(font()));
    reading_->setObjectName(QStringLiteral("reading"));
    // Takes the room that is left: in a language of long words the buttons need theirs.
    reading_->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    below_->addWidget(faders_);
    below_->addWidget(new PolarityList(work_));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(build_controls());
    column->addWidget(plot_, 5);
    column->addWidget(below_, 2);
    setFocusProxy(plot_);
    faders_->x_of = [this](double hz) { return plot_->x_of(hz); };
    connect_services();
    connect_faders();
    fill_mixes();
    refresh_rings();
}

QToolButton* ResponsePanel::add_button(QWidget* row, const char* name, const QString& text, const QString& sentence) {
    auto* button = new QToolButton(row);
    button->setObjectName(QString::fromLatin1(name));
    button->setText(text);
    button->setAccessibleName(text);
    button->setToolTip(sentence);
    button->setStatusTip(sentence);
    button->setAutoRaise(true);
    row->layout()->addWidget(button);
    return button;
}

QWidget* ResponsePanel::build_controls() {
    auto* row = new QWidget(this);
    auto* line = new QHBoxLayout(row);
    line->setContentsMargins(6, 2, 6, 2);
    line->setSpacing(4);
    line->addWidget(new CurveChoice(work_, row));
    line->addWidget(reading_, 1);
    mixes_->setObjectName(QStringLiteral("mix_choice"));
    mixes_->setAccessibleName(tr("Mix of the faders"));
    mixes_->setToolTip(tr("Whose faders, notches and high-pass these are."));
    mixes_->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    line->addWidget(mixes_);
    auto* polarity = add_button(row, "show_polarity", tr("Polarity"),
                                tr("Shows the polarity of every input and mix in place of the faders."));
    polarity->setCheckable(true);
    connect(polarity, &QToolButton::toggled, below_, [this](bool on) { below_->setCurrentIndex(on ? 1 : 0); });
    compare_ = add_button(row, "compare", tr("Without EQ"),
                          tr("Dashed: the curve if this mix had no equaliser at all, to compare before and after."));
    compare_->setCheckable(true);
    connect(compare_, &QToolButton::toggled, this, &ResponsePanel::compare);
    connect(add_button(row, "flat", tr("Flat"), tr("Sets all 31 bands of this mix to 0 dB.")), &QToolButton::clicked,
            this, [this] { work_.document.edit(tr("Flatten faders"), [this](Show& show) { set_flat(show, mix()); }); });
    copy_ = add_button(row, "copy_to", tr("Copy to"), tr("Copies the equaliser of this mix to another one."));
    copy_->setPopupMode(QToolButton::InstantPopup);
    copy_->setMenu(new QMenu(copy_));
    connect(copy_->menu(), &QMenu::aboutToShow, this, &ResponsePanel::copy_to_menu);
    auto* filters = add_button(row, "filters", tr("Filters"),
                               tr("Adds or removes a notch or the high-pass; drag their handles on the curve."));
    filters->setPopupMode(QToolButton::InstantPopup);
    filters->setMenu(new QMenu(filters));
    filters->menu()->addAction(tr("Add a notch at the ring"), this, &ResponsePanel::add_notch_at_ring);
    filters->menu()->addAction(tr("Remove the notch touched last"), this, &ResponsePanel::remove_chosen_notch);
    filters->menu()->addAction(tr("High-pass in or out"), this, &ResponsePanel::toggle_high_pass);
    auto* out = add_button(row, "save_curves", tr("Save"), tr("Saves the curves as a picture or as a table."));
    out->setPopupMode(QToolButton::InstantPopup);
    out->setMenu(new QMenu(out));
    out->menu()->addAction(tr("As a picture..."), this, &ResponsePanel::save_picture);
    out->menu()->addAction(tr("As a table (CSV)..."), this, &ResponsePanel::save_csv);
    return row;
}

void ResponsePanel::connect_services() {
    connect(&work_.response, &ResponseService::curves_changed, this,
            [this] { plot_->set_curves(work_.response.curves()); });
    connect(&work_.response, &ResponseService::band_changed, this,
            [this] { plot_->set_band(work_.response.band().get()); });
    connect(&work_.response, &ResponseService::preview_changed, this,
            [this] { plot_->set_preview(work_.response.preview().get()); });
    connect(&work_.analysis, &AnalysisService::updated, this, &ResponsePanel::refresh_rings);
    connect(&work_.spotlight, &Spotlight::ring_changed, this, &ResponsePanel::follow_ring);
    connect(&work_.document, &Document::replaced, this, &ResponsePanel::fill_mixes);
    connect(&work_.document, &Document::changed, this, [this] {
        if (!work_.document.in_gesture()) fill_mixes();
        refresh_mix();
    });
    connect(plot_, &ResponsePlot::reading, reading_, &QLabel::setText);
    connect(plot_, &ResponsePlot::ring_picked, this, [this](const Ring& ring) { work_.spotlight.set_ring(ring); });
    connect(plot_, &ResponsePlot::view_changed, faders_, qOverload<>(&QWidget::update));
    connect(mixes_, &QComboBox::currentIndexChanged, this, &ResponsePanel::refresh_mix);
}

void ResponsePanel::connect_faders() {
    const auto step = [this](int band) {
        return tr("Pull %1 in %2")
            .arg(band_text(kNominalThirdOctaves[static_cast<std::size_t>(band)]), mixes_->currentText());
    };
    connect(faders_, &FaderBank::grabbed, this, [this, step](int band) { work_.document.begin_gesture(step(band)); });
    connect(faders_, &FaderBank::dragged, this, [this](int band, double db) {
        if (work_.document.in_gesture())
            work_.document.update_gesture([&, id = mix()](Show& show) { set_band(show, id, band, db); });
    });
    connect(faders_, &FaderBank::released, this, [this] { work_.document.end_gesture(); });
    connect(faders_, &FaderBank::set_to, this, [this, step](int band, double db) {
        if (work_.document.in_gesture()) work_.document.end_gesture();
        work_.document.edit(step(band), [&, id = mix()](Show& show) { set_band(show, id, band, db); });
    });
}

std::string ResponsePanel::mix() const { return mixes_->currentData().toString().toStdString(); }

void ResponsePanel::choose_mix(const std::string& id) {
    mixes_->setCurrentIndex(std::max(0, mixes_->findData(qstr(id))));
}

void ResponsePanel::fill_mixes() {
    const std::string before = mix();
    {
        const QSignalBlocker block(mixes_);
        mixes_->clear();
        for (const Mix& mix : work_.document.show().mixes)
            mixes_->addItem(tr("Mix %1 %2").arg(mix.number).arg(qstr(mix.name)), qstr(mix.id));
        choose_mix(before);
    }
    const bool any = mixes_->count() > 0;
    for (QWidget* widget : std::initializer_list<QWidget*>{mixes_, faders_, compare_, copy_}) widget->setEnabled(any);
    refresh_mix();
}

void ResponsePanel::refresh_mix() {
    std::array<double, kThirdOctaves> gains{};
    for (int band = 0; band < kThirdOctaves; ++band)
        gains[static_cast<std::size_t>(band)] = band_of(work_.document.show(), mix(), band);
    faders_->set_gains(gains);
    refresh_probabilities();
    handles_->set_mix(mix());
    if (compare_->isChecked()) compare(true);
}

void ResponsePanel::refresh_rings() {
    const auto result = work_.analysis.result();
    plot_->set_rings(result ? result->rings : std::vector<Ring>{}, work_.document.show().system.target_margin_db);
    refresh_probabilities();
}

void ResponsePanel::refresh_probabilities() {
    std::array<double, kThirdOctaves> probabilities{};
    if (const auto result = work_.analysis.result(); result && result->tolerance)
        for (const BandProbability& entry : result->tolerance->first_ring)
            for (const auto& [id, share] : entry.mixes)
                if (id == mix())
                    probabilities[static_cast<std::size_t>(third_octave_of(entry.band_hz))] = entry.probability * share;
    faders_->set_probabilities(probabilities);
}

void ResponsePanel::follow_ring() {
    const auto& ring = work_.spotlight.ring();
    plot_->set_highlight(ring);
    if (!ring || work_.document.in_gesture()) return;
    faders_->set_current(third_octave_of(ring->band_hz));
    if (!ring->strongest_mix.empty()) choose_mix(ring->strongest_mix);
}

void ResponsePanel::compare(bool on) {
    if (!on) return work_.spotlight.set_preview({});
    work_.spotlight.set_preview(Preview{tr("without equaliser"),
                                        std::make_shared<const Show>(without_equaliser(work_.document.show(), mix()))});
}

void ResponsePanel::add_notch_at_ring() {
    const auto& ring = work_.spotlight.ring();
    const double hz = ring ? ring->hz : third_octave_centre(faders_->current());
    work_.document.edit(tr("Add notch at %1").arg(hz_text(hz)), [&](Show& show) { add_notch(show, mix(), hz); });
}

void ResponsePanel::remove_chosen_notch() {
    if (const auto notch = handles_->chosen_notch())
        work_.document.edit(tr("Remove notch"), [&](Show& show) { remove_notch(show, mix(), *notch); });
    else
        work_.say(tr("Click the handle of a notch on the curve first."));
}

void ResponsePanel::toggle_high_pass() {
    constexpr double kUsualHz = 80.0;
    const Mix* now = find_by_id(work_.document.show().mixes, mix());
    const bool in = now && now->high_pass;
    work_.document.edit(in ? tr("Take high-pass out") : tr("Put high-pass in"),
                        [&](Show& show) { set_high_pass(show, mix(), in ? 0.0 : kUsualHz); });
}

void ResponsePanel::copy_to_menu() {
    copy_->menu()->clear();
    for (const Mix& target : work_.document.show().mixes)
        if (target.id != mix())
            copy_->menu()->addAction(
                tr("Mix %1 %2").arg(target.number).arg(qstr(target.name)), this, [this, from = mix(), to = target.id] {
                    work_.document.edit(tr("Copy equaliser"), [&](Show& show) { copy_equaliser(show, from, to); });
                });
}

void ResponsePanel::save_picture() {
    const QString name =
        QFileDialog::getSaveFileName(this, tr("Save the curves as a picture"), {}, tr("Pictures (*.png);;PDF (*.pdf)"));
    if (name.isEmpty()) return;
    const bool done = name.endsWith(QStringLiteral(".pdf")) ? plot_->savePdf(name) : plot_->savePng(name, 0, 0, 2.0);
    if (done) return work_.say(tr("Saved %1.").arg(name));
    work_.report({tr("The picture could not be written."), name, {}, tr("Choose another folder.")});
}

void ResponsePanel::save_csv() {
    if (!plot_->curves()) return;
    const QString name = QFileDialog::getSaveFileName(this, tr("Save the curves as a table"), {}, tr("Tables (*.csv)"));
    if (name.isEmpty()) return;
    const auto saved = save_atomically(to_path(name), response_csv(*plot_->curves(), work_.response.band().get()));
    if (saved) return work_.say(tr("Saved %1.").arg(name));
    work_.report({tr("The table could not be written."), name, qstr(saved.error()), tr("Choose another folder.")});
}

}  // namespace howlmap::app
