// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/ears/ears_panel.h"

#include <QComboBox>
#include <QDoubleSpinBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QSplitter>
#include <QTableView>
#include <QVBoxLayout>

#include "app/document/analysis_service.h"
#include "app/document/document.h"
#include "app/document/selection.h"
#include "app/panels/ears/ears_model.h"
#include "core/listening/masking.h"
#include "core/listening/wash.h"
#include "core/report/words.h"
#include "core/show/find.h"

namespace howlmap::app {
namespace {

/// Margin as drawn, for solvers that try many sends.
std::optional<double> margin_as_drawn(const Show& show) {
    AnalysisOptions options;
    options.tolerance = options.rings = options.listening = false;
    const auto result = analyse(show, options);
    return result ? result->margin_db : std::nullopt;
}

QString margin_text(std::optional<double> margin) { return QString::fromStdString(report::margin_words(margin)); }

QTableView* table(QAbstractItemModel* model, const QString& name, QWidget* parent) {
    auto* view = new QTableView(parent);
    view->setModel(model);
    view->setAccessibleName(name);
    view->verticalHeader()->hide();
    view->setSelectionBehavior(QAbstractItemView::SelectRows);
    view->setEditTriggers(QAbstractItemView::NoEditTriggers);
    view->horizontalHeader()->setStretchLastSection(true);
    view->setWordWrap(false);
    return view;
}

/// Which loudspeakers make the wash at a place, those that matter: "side fill 61 %, wedge 2 20 %".
QString makers_of(const Show& show, const Listener& place) {
    QStringList parts;
    constexpr double kWorthNaming = 0.1;
    for (const WashShare& share : wash_shares(show, place.position))
        if (share.share >= kWorthNaming)
            if (const Loudspeaker* speaker = find_by_id(show.loudspeakers, share.loudspeaker))
                parts.append(QStringLiteral("%1 %2 %")
                                 .arg(QString::fromStdString(report::name_of(*speaker)))
                                 .arg(qRound(100.0 * share.share)));
    return parts.join(QStringLiteral(", "));
}

std::vector<HouseModel::Row> house_rows(const Show& show) {
    std::vector<HouseModel::Row> rows;
    for (const Listener& place : show.listeners)
        rows.push_back({QString::fromStdString(report::name_of(place)), makers_of(show, place), {}});
    return rows;
}

/// What is masked at one ear, or that nothing is.
QString masked_words(const Show& show, const std::string& performer) {
    QStringList sentences;
    for (const EarSpectrum& spectrum : ear_spectra(show))
        if (spectrum.performer == performer)
            for (const MaskedRange& range : spectrum.masked) sentences.append(QString::fromStdString(range.sentence));
    return sentences.join(QLatin1Char(' '));
}

}  // namespace

EarsPanel::EarsPanel(const Workspace& workspace, QWidget* parent)
    : QWidget(parent),
      workspace_(workspace),
      players_model_(new PlayersModel(this)),
      house_model_(new HouseModel(this)) {
    build();
    connect(&workspace_.analysis, &AnalysisService::updated, this, &EarsPanel::show_figures);
    connect(&workspace_.document, &Document::replaced, this, &EarsPanel::show_figures);
    connect(players_->selectionModel(), &QItemSelectionModel::currentRowChanged, this, [this](const QModelIndex& row) {
        if (players_->hasFocus()) workspace_.selection.set({players_model_->id_at(row.row())});
        show_words();
    });
    connect(&workspace_.selection, &Selection::changed, this, [this] {
        const int row = players_model_->row_of(workspace_.selection.ids().value(0));
        if (row >= 0) players_->setCurrentIndex(players_model_->index(row, 0));
    });
    show_figures();
}

void EarsPanel::build() {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(6, 6, 6, 6);
    layout->addWidget(build_tables(), 1);
    sentence_ = new QLabel(this);
    sentence_->setWordWrap(true);
    layout->addWidget(sentence_);
    layout->addWidget(build_wish());
    outcome_ = new QLabel(this);
    outcome_->setWordWrap(true);
    outcome_->setTextInteractionFlags(Qt::TextSelectableByMouse);
    layout->addWidget(outcome_);
    auto* caution =
        new QLabel(tr("Levels and minutes are estimates for planning, not a measurement of hearing safety."), this);
    caution->setWordWrap(true);
    layout->addWidget(caution);
}

QWidget* EarsPanel::build_tables() {
    auto* splitter = new QSplitter(Qt::Horizontal, this);
    players_ = table(players_model_, tr("Players: own, others, hear margin, minutes"), splitter);
    house_ = table(house_model_, tr("Stage wash in the house"), splitter);
    splitter->setStretchFactor(0, 3);
    splitter->setStretchFactor(1, 2);
    return splitter;
}

QPushButton* EarsPanel::button(const QString& text, const QString& tip, void (EarsPanel::*slot)()) {
    auto* made = new QPushButton(text, this);
    made->setToolTip(tip);
    connect(made, &QPushButton::clicked, this, slot);
    return made;
}

QWidget* EarsPanel::build_wish() {
    auto* row = new QWidget(this);
    auto* layout = new QHBoxLayout(row);
    layout->setContentsMargins(0, 0, 0, 0);
    wish_kind_ = new QComboBox(row);
    wish_kind_->addItem(tr("hear margin"), int(WishKind::hear_margin));
    wish_kind_->addItem(tr("own level at the ear"), int(WishKind::own_level));
    wish_kind_->addItem(tr("everything at the ear"), int(WishKind::ear_level));
    wish_kind_->setAccessibleName(tr("What is wished for"));
    wish_value_ = new QDoubleSpinBox(row);
    wish_value_->setRange(-60.0, 160.0);
    wish_value_->setDecimals(1);
    wish_value_->setValue(3.0);
    wish_value_->setSuffix(tr(" dB"));
    wish_value_->setAccessibleName(tr("How much is wished for"));
    set_minutes_ = new QDoubleSpinBox(row);
    set_minutes_->setRange(1.0, 1440.0);
    set_minutes_->setDecimals(0);
    set_minutes_->setValue(90.0);
    set_minutes_->setSuffix(tr(" min set"));
    set_minutes_->setAccessibleName(tr("Length of the set"));
    connect(set_minutes_, &QDoubleSpinBox::valueChanged, players_model_, &PlayersModel::set_minutes);
    apply_ = button(tr("Apply"), tr("Sets the sends that were found, as one step"), &EarsPanel::apply_found);
    apply_->setEnabled(false);
    layout->addWidget(new QLabel(tr("Wish:"), row));
    layout->addWidget(wish_kind_);
    layout->addWidget(wish_value_);
    layout->addWidget(
        button(tr("For this player"), tr("Solves the player's own sends for the wish"), &EarsPanel::solve_wish));
    layout->addWidget(
        button(tr("For all"), tr("The same wish for everybody, solved together"), &EarsPanel::solve_everybody));
    layout->addWidget(button(tr("Quietest stage"), tr("The lowest sends at which everybody has this hear margin"),
                             &EarsPanel::find_quietest));
    layout->addWidget(button(tr("What louder costs"),
                             tr("What 3 dB more of a neighbour or of backline costs everybody"),
                             &EarsPanel::tell_spiral));
    layout->addWidget(apply_);
    layout->addStretch(1);
    layout->addWidget(set_minutes_);
    return row;
}

void EarsPanel::show_figures() {
    const Show& show = workspace_.document.show();
    const auto result = workspace_.analysis.result();
    players_model_->show_result(show, result);
    if (!players_->currentIndex().isValid() && players_model_->rowCount() > 0)
        players_->setCurrentIndex(players_model_->index(0, 0));
    words_worker_.run(
        [this, show, result,
         player = players_model_->id_at(players_->currentIndex().row()).toStdString()](const Job&) -> Worker::Deliver {
            auto rows = house_rows(show);
            for (std::size_t i = 0; i < rows.size(); ++i)
                if (result)
                    if (const HouseFigure* figure = find_by_id(result->house, show.listeners[i].id))
                        rows[i].figure = *figure;
            return [this, rows, words = masked_words(show, player)] {
                house_model_->show_rows(rows);
                sentence_->setText(words);
            };
        });
}

void EarsPanel::show_words() {
    const std::string player = players_model_->id_at(players_->currentIndex().row()).toStdString();
    words_worker_.run([this, show = workspace_.document.show(), player](const Job&) -> Worker::Deliver {
        return [this, words = masked_words(show, player)] { sentence_->setText(words); };
    });
}

QString EarsPanel::name_of_player(const std::string& id) const {
    const Performer* performer = find_by_id(workspace_.document.show().performers, id);
    return QString::fromStdString(performer ? report::name_of(*performer) : id);
}

Wish EarsPanel::wish_for(const std::string& performer) const {
    return {performer, static_cast<WishKind>(wish_kind_->currentData().toInt()), wish_value_->value()};
}

void EarsPanel::solve_wish() {
    const QString id = players_model_->id_at(players_->currentIndex().row());
    if (!id.isEmpty()) solve({wish_for(id.toStdString())});
}

void EarsPanel::solve_everybody() {
    std::vector<Wish> wishes;
    for (const Performer& performer : workspace_.document.show().performers) wishes.push_back(wish_for(performer.id));
    solve(std::move(wishes));
}

void EarsPanel::solve(std::vector<Wish> wishes) {
    outcome_->setText(tr("Solving…"));
    worker_.restart(
        [this, wishes = std::move(wishes), show = workspace_.document.show()](const Job&) -> Worker::Deliver {
            SolveOptions options;
            options.margin = margin_as_drawn;
            options.target_margin_db = show.system.target_margin_db;
            return [this, solution = solve_sends(show, wishes, options)] { show_solution(solution); };
        });
}

void EarsPanel::show_solution(const SendSolution& solution) {
    QStringList lines;
    for (const WishOutcome& outcome : solution.outcomes) {
        const QString name = name_of_player(outcome.wish.performer);
        lines.append(outcome.met ? tr("%1: %2 to %3.").arg(name, db_text(outcome.before_db), db_text(outcome.after_db))
                                 : tr("%1: %2").arg(name, QString::fromStdString(outcome.reason)));
    }
    lines.append(tr("Margin as drawn %1, then %2.")
                     .arg(margin_text(solution.margin_before_db), margin_text(solution.margin_after_db)));
    outcome_->setText(lines.join(QLatin1Char(' ')));
    offer(solution.after, tr("Set sends for a wish"));
}

void EarsPanel::find_quietest() {
    outcome_->setText(tr("Looking for the quietest stage…"));
    worker_.restart(
        [this, wanted = wish_value_->value(), show = workspace_.document.show()](const Job&) -> Worker::Deliver {
            QuietStageOptions options;
            options.hear_margin_db = wanted;
            options.margin = margin_as_drawn;
            return [this, quiet = quietest_stage(show, options)] { show_quiet(quiet); };
        });
}

void EarsPanel::show_quiet(const QuietStage& quiet) {
    if (!quiet.possible) {
        QStringList reasons;
        for (const std::string& reason : quiet.limited_by) reasons.append(QString::fromStdString(reason));
        outcome_->setText(tr("No levels let everybody hear themselves: %1").arg(reasons.join(QStringLiteral("; "))));
        offer(workspace_.document.show(), {});
        return;
    }
    QStringList lines{tr("%1 sends change. Margin as drawn %2, then %3.")
                          .arg(quiet.changes.size())
                          .arg(margin_text(quiet.margin_before_db), margin_text(quiet.margin_after_db))};
    for (std::size_t i = 0; i < quiet.house_before.size() && i < quiet.house_after.size(); ++i)
        lines.append(tr("Wash at %1: %2, then %3.")
                         .arg(QString::fromStdString(quiet.house_before[i].id),
                              dba_text(quiet.house_before[i].wash_dba), dba_text(quiet.house_after[i].wash_dba)));
    outcome_->setText(lines.join(QLatin1Char(' ')));
    offer(quiet.after, tr("Set the quietest stage"));
}

void EarsPanel::tell_spiral() {
    outcome_->setText(tr("Working out what 3 dB more costs…"));
    worker_.restart([this, show = workspace_.document.show()](const Job&) -> Worker::Deliver {
        QStringList lines;
        for (const Louder& louder : cost_of_louder(show, margin_as_drawn)) {
            const auto* backline = find_by_id(show.backline, louder.source);
            const auto* mix = find_by_id(show.mixes, louder.source);
            const QString source = QString::fromStdString(backline ? report::name_of(*backline)
                                                          : mix    ? report::name_of(*mix)
                                                                   : louder.source);
            lines.append(
                louder.settles
                    ? tr("%1 up 3 dB: margin %2, then %3 once everybody has turned up to hear as before.")
                          .arg(source, margin_text(louder.margin_before_db), margin_text(louder.margin_after_db))
                    : tr("%1 up 3 dB: each answer calls for another, and there is no end.").arg(source));
        }
        return [this, lines] {
            outcome_->setText(lines.isEmpty() ? tr("Nothing on this stage can get louder.")
                                              : lines.join(QLatin1Char('\n')));
        };
    });
}

void EarsPanel::offer(Show after, const QString& step) {
    const bool differs = !step.isEmpty() && !(after == workspace_.document.show());
    found_ = differs ? std::optional<Show>(std::move(after)) : std::nullopt;
    found_step_ = step;
    found_revision_ = workspace_.document.revision();
    apply_->setEnabled(differs);
}

void EarsPanel::apply_found() {
    if (!found_) return;
    if (found_revision_ != workspace_.document.revision()) {
        workspace_.say(tr("The show has changed since: solve again."));
    } else {
        workspace_.document.edit(found_step_, [this](Show& show) { show.mixes = found_->mixes; });
    }
    found_.reset();
    apply_->setEnabled(false);
}

}  // namespace howlmap::app
