// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <map>
#include <string>

#include "app/panels/inspector/tables.h"
#include "core/show/show.h"
#include "tests/app/canvas/hands.h"

namespace howlmap::app {

/// Rename the drawn ids to those of the example, so that both shows can be compared whole.
class Namesakes {
  public:
    void add(const std::string& drawn, const std::string& wanted) { wanted_[drawn] = wanted, drawn_[wanted] = drawn; }
    QVariant to_drawn(const QVariant& value) const {
        const auto found = drawn_.find(value.toString().toStdString());
        return found == drawn_.end() ? value : QVariant(QString::fromStdString(found->second));
    }
    QStringList to_drawn(QStringList values) const {
        for (QString& value : values) value = to_drawn(QVariant(value)).toString();
        return values;
    }
    QString drawn(const std::string& wanted) const { return QString::fromStdString(drawn_.at(wanted)); }

    Show renamed(Show show) const {
        const auto rename = [this](std::string& id) {
            if (const auto found = wanted_.find(id); found != wanted_.end()) id = found->second;
        };
        const auto rename_all = [&](auto& list) {
            for (auto& item : list) rename(item.id);
        };
        rename_all(show.stage.risers), rename_all(show.loudspeakers), rename_all(show.inputs);
        rename_all(show.performers), rename_all(show.mixes), rename_all(show.backline);
        rename_all(show.listeners), rename_all(show.marks);
        for (Input& input : show.inputs) rename(input.performer);
        for (Performer& performer : show.performers) rename(performer.mix);
        for (Mix& mix : show.mixes) {
            for (std::string& speaker : mix.loudspeakers) rename(speaker);
            for (Send& send : mix.sends) rename(send.input);
        }
        return show;
    }

  private:
    std::map<std::string, std::string> wanted_, drawn_;
};

/// One drawing of the example with sixteen inputs by hand.
class Drawing {
  public:
    Drawing(MainWindow& window, Show wanted) : window_(window), hands_(window), wanted_(std::move(wanted)) {}

    Hands& hands() { return hands_; }
    const Show& show() const { return window_.document().show(); }
    Show renamed() const { return names_.renamed(show()); }

    void stage();
    void risers();
    void players();
    void loudspeakers();
    void inputs();
    void the_rest();
    void mixes();
    void sends();
    void input_list();

  private:
    enum class Way { enter, double_click, drop };
    void place(const std::string& id, Vec2 at, Way way);
    void place_words(const std::string& id, const QString& words, Vec2 at, Way way);
    void move_to(Vec2 at);
    std::string selected() const { return window_.selection().ids().value(0).toStdString(); }
    void fill_in(const Fields& fields, const std::string& wanted_id, const QStringList& later = {});
    void fill_in_tables(const std::string& wanted_id);
    void corners(const std::string& drawn_id, const Outline& outline);

    MainWindow& window_;
    Hands hands_;
    Show wanted_;
    Namesakes names_;
};

}  // namespace howlmap::app
