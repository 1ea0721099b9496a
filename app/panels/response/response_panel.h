// SPDX-License-Identifier: GPL-3.0-or-later
// Loop gain over frequency, and under it what can be done about it in one mix: faders, notches, high-pass, polarity.
#pragma once
#include <QWidget>
#include <string>

#include "app/panels/workspace.h"

class QComboBox;
class QLabel;
class QStackedWidget;
class QToolButton;

namespace howlmap::app {

class FaderBank;
class FilterHandles;
class ResponsePlot;

class ResponsePanel : public QWidget {
    Q_OBJECT
  public:
    ResponsePanel(const Workspace& workspace, QWidget* parent);

    ResponsePlot& plot() { return *plot_; }
    FaderBank& faders() { return *faders_; }
    FilterHandles& handles() { return *handles_; }
    /// Id of the mix whose faders are shown, empty without a mix.
    std::string mix() const;
    void choose_mix(const std::string& id);

  private:
    QWidget* build_controls();
    QToolButton* add_button(QWidget* row, const char* name, const QString& text, const QString& sentence);
    void connect_services();
    void connect_faders();
    void fill_mixes();
    void refresh_rings();
    void refresh_mix();
    void refresh_probabilities();
    void follow_ring();
    void compare(bool on);
    void add_notch_at_ring();
    void remove_chosen_notch();
    void toggle_high_pass();
    void save_picture();
    void save_csv();
    void copy_to_menu();

    Workspace work_;
    ResponsePlot* plot_;
    FaderBank* faders_;
    FilterHandles* handles_;
    QStackedWidget* below_;
    QComboBox* mixes_;
    QLabel* reading_;
    QToolButton *copy_ = nullptr, *compare_ = nullptr;
};

}  // namespace howlmap::app
