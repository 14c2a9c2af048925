/**
 * The chief formulas of the calculations in the typesetting language TeX, a line each, by the name of the calculation. The plain lines beside
 * each shape say all of it; they stand where nothing can be typeset (the command line, an explanation), and below these.
 */
export const typesetFormulas: Readonly<Record<string, readonly string[]>> = {
  "effective-size": [
    String.raw`N_e = \frac{1}{\kappa\,(1+F)}`,
    String.raw`\begin{aligned}\kappa = \tfrac14[&(1+s)^2 P_{MM}\\ &+ 2(1-s^2) P_{MF}\\ &+ (1-s)^2 P_{FF}]\end{aligned}`,
    String.raw`P_{MM} = \sum q_i^2`,
    String.raw`P_{FF} = \sum p_i^2`,
    String.raw`P_{MF} = \sum q_i p_i`,
    String.raw`\text{diversity lost} = \frac{1}{2N_e}`,
  ],
  "effective-size-span": [
    String.raw`N_e = \frac{1}{\kappa\,(1+F)} \;\text{ at the greatest and the least } \kappa`,
    String.raw`\frac{1}{N_f} \le P_{MM} \le 1 \;\text{ (shares unknown)}`,
    String.raw`q^2 + \frac{(1-q)^2}{n-1} \le P_{MM} \le r q^2 + (1-rq)^2`,
    String.raw`r = \lfloor 1/q \rfloor \;\text{ (largest share } q \text{ known)}`,
  ],
  lineage: [
    String.raw`\begin{aligned}\theta_\text{new} = \tfrac14[&(1+s)^2 G(P_{MM})\\ &+ 2u(1+s)\,G(P_{MF})\\ &+ u^2 G(P_{FF})]\end{aligned}`,
    String.raw`G(P) = P\,S + (1-P)\,\bar\theta`,
    String.raw`S = \tfrac12(1+\bar F) \qquad u = (1-s)(1-m)`,
    String.raw`F_\text{new} = s\,S + u\,G(P_{MF})`,
    String.raw`\bar\theta = \sum_A\sum_B w_A w_B\,\Theta(A,B)`,
    String.raw`\Theta(\text{new},X) = \tfrac12(1+s+u)\sum_A w_A\,\Theta(A,X)`,
    String.raw`\text{diversity retained} = 1-\theta`,
    String.raw`\text{founder equivalents} = \frac{1}{2\theta}`,
  ],
  "lineage-span": [
    String.raw`\theta_\text{new} = a^2\,\bar\theta + \kappa_m (S - \bar\theta) \qquad S = \tfrac12(1+\bar F)`,
    String.raw`F_\text{new} = \alpha\,S + (2a-1-\alpha)\,\bar\theta`,
    String.raw`\Theta(\text{new},X) = a \sum_A w_A\,\Theta(A,X)`,
    String.raw`a = \tfrac12(1+s+u) \qquad \alpha = s + u\,P_{MF}`,
    String.raw`\begin{aligned}\kappa_m = \tfrac14[&(1+s)^2 P_{MM}\\ &+ 2u(1+s)\,P_{MF} + u^2 P_{FF}]\end{aligned}`,
    String.raw`b + \frac{1}{\sum_A 1/(\theta_A - b)} \le \bar\theta_U \le \max_A \theta_A`,
    String.raw`0 \le \Theta(a,b) \le \min(\theta_a,\theta_b)`,
  ],
  "blend-advice": [
    String.raw`\min_{w}\; \sum_i\sum_j w_i w_j\,\Theta(i,j)`,
    String.raw`\sum_i w_i = 1`,
    String.raw`w_i = 0 \;\text{ or }\; w_i \ge w_\text{min}`,
  ],
  "bottleneck-cost": [String.raw`\text{cost} = (1-\theta_\text{otherwise}) - (1-\theta_\text{as it was})`],
  "harmonic-size": [String.raw`N_h = \frac{t}{\sum 1/N_e}`],
  "grown-on": [
    String.raw`t = \left\lceil \frac{\text{years}}{\text{years between}} \right\rceil`,
    String.raw`\text{left} = 1-\theta_t`,
  ],
  "outcome-spread": [
    String.raw`\text{kept at one place} = 1 - \sum f^2`,
    String.raw`\text{rare form kept} = \overline{1-(1-p)^k}`,
  ],
  "population-plan": [
    String.raw`t = \left\lceil \frac{\text{years}}{\text{years between grow-outs}} \right\rceil`,
    String.raw`N_e \ge \frac{1}{2\left(1-R^{1/t}\right)}`,
  ],
  "allele-capture": [String.raw`\left[1-(1-p)^{2n/(1+F)}\right]^{L} \ge P`],
  "germination-test": [
    String.raw`\hat p = \frac{x}{n}`,
    String.raw`\text{exact low} = B^{-1}_{\alpha/2}(x,\,n-x+1)`,
    String.raw`\text{exact high} = B^{-1}_{1-\alpha/2}(x+1,\,n-x)`,
    String.raw`\text{Wilson: } \frac{\hat p + \frac{z^2}{2n} \pm z\sqrt{\frac{\hat p(1-\hat p)}{n}+\frac{z^2}{4n^2}}}{1+\frac{z^2}{n}}`,
    String.raw`\text{Jeffreys: the middle of } \text{Beta}\!\left(x+\tfrac12,\,n-x+\tfrac12\right)`,
    String.raw`\text{tolerated} = Q_{0.975}(r,\infty)\sqrt{\frac{\hat p(1-\hat p)}{\bar n}}`,
    String.raw`\chi^2 = \sum_i\frac{(x_i-n_i\hat p)^2}{n_i\hat p(1-\hat p)}`,
  ],
  "germination-compare": [
    String.raw`d = \hat p_b - \hat p_a`,
    String.raw`\text{low} = d - \sqrt{(\hat p_b-l_b)^2 + (u_a-\hat p_a)^2}`,
    String.raw`\text{high} = d + \sqrt{(u_b-\hat p_b)^2 + (\hat p_a-l_a)^2}`,
  ],
  "germination-speed": [
    String.raw`\text{mean time} = \frac{\sum_i n_i d_i}{\sum_i n_i}`,
    String.raw`\text{index} = \sum_i\frac{n_i}{d_i}`,
    String.raw`t_{50} = d_{j-1} + \frac{\frac N2 - C_{j-1}}{C_j - C_{j-1}}\,(d_j-d_{j-1})`,
  ],
  "seed-moisture": [String.raw`\frac{(1-D_o)\,M_e}{1.1+\frac{T}{90}} = \sqrt{440}\;\sqrt{-\ln(1-R)}`],
  viability: [
    String.raw`\log_{10}\sigma = K_E - C_W\log_{10}m - C_H t - C_Q t^2`,
    String.raw`v = \Phi\!\left(K_i - \frac{d}{\sigma}\right)`,
  ],
  "viability-forecast": [
    String.raw`x_j \sim \text{Binomial}\!\left(n_j,\; c\,\Phi\!\left(K_i - \frac{y_j}{\sigma}\right)\right)`,
    String.raw`K_i \sim N(\mu_K,\,s_K)`,
    String.raw`\ln\sigma \sim N(\mu_\sigma,\,s_\sigma)`,
    String.raw`\text{years to the line} = \left(K_i - \Phi^{-1}(v)\right)\sigma`,
  ],
  "sowing-count": [
    String.raw`\text{the smallest } m \text{ with } P\!\left(\text{Binomial}(m,\,e\,\pi) \ge N\right) \ge P`,
    String.raw`\pi \sim \text{Beta}\!\left(x+\tfrac12,\;n-x+\tfrac12\right)`,
  ],
  "off-types": [
    String.raw`\text{upper bound} = B^{-1}_{P}(k+1,\,n-k)`,
    String.raw`n = \left\lceil \frac{\ln(1-P)}{\ln(1-f)} \right\rceil`,
  ],
  "off-type-trend": [String.raw`z = \frac{\sum_i x_i\,(k_i - n_i f)}{\sqrt{f(1-f)\sum_i n_i (x_i-\bar x)^2}}`],
  "off-type-frequency": [
    String.raw`q_f = \frac{\frac12 Aa}{1-aa}`,
    String.raw`q_m = q_f \;\text{ (before pollen)}`,
    String.raw`q_m = aa + \tfrac12 Aa \;\text{ (after)}`,
    String.raw`aa' = q_f\,q_m`,
    "Aa' = q_f(1-q_m) + q_m(1-q_f)",
  ],
  "foreign-pollen-seen": [
    String.raw`\hat m = \frac{x}{n\,g}`,
    String.raw`\frac{B^{-1}_{\alpha/2}(x,\,n-x+1)}{g} \le m \le \frac{B^{-1}_{1-\alpha/2}(x+1,\,n-x)}{g}`,
    String.raw`x = 0:\quad m \le \frac{1-(1-P)^{1/n}}{g}`,
  ],
  "pollen-risk": [
    String.raw`\text{share} = \frac{\sum_i o_i c_i h_i \int_{S_i} g}{\int_\text{plot} g + \sum_i o_i c_i h_i \int_{S_i} g}`,
    String.raw`\text{odds: } \frac{\sum_i t_i}{1+\sum_i t_i}`,
    String.raw`t_i = \frac{P(d_i)}{1-P(d_i)}\;\frac{A_i}{A}\;o_i c_i`,
  ],
  "flowering-overlap": [
    String.raw`\text{overlap} = \int \min(f,\,s)\,dt`,
    String.raw`\text{synchrony} = \exp\!\left(-\frac{\delta^2}{2(\sigma_f^2+\sigma_s^2)}\right)`,
    String.raw`\text{share} = \int s\;\frac{\rho f}{o+\rho f}\,dt`,
  ],
  "choose-plants": [
    String.raw`z = \frac{v-\bar v_\text{cell}}{s}`,
    String.raw`s = \sqrt{\frac{\sum d^2}{n-c}}`,
    String.raw`\text{index} = \frac{\sum_k w_k z_k}{\sum_k w_k}`,
  ],
  "selection-response": [String.raw`R = i\,h^2\,\sigma_P\,c`, String.raw`i_\infty = \frac{\varphi(\Phi^{-1}(1-p))}{p}`],
  "realised-heritability": [
    String.raw`h^2 = \frac{\sum_t S_t R_t}{\sum_t S_t^2}`,
    String.raw`h^2_\text{drift} = \frac{S'V^{-1}R}{S'V^{-1}S}`,
    String.raw`\text{s.e.} = \frac{1}{\sqrt{S'V^{-1}S}}`,
  ],
  "gene-drop": [
    String.raw`\hat\theta = \frac1R\sum_{r=1}^{R} \theta_r`,
    String.raw`\text{s.e.} = \sqrt{\frac{\sum_r(\theta_r-\hat\theta)^2}{R(R-1)}}`,
  ],
  reserve: [String.raw`\text{seeds} = g\,S + t\,n_t + d\,S + a`],
  "scorer-agreement": [
    String.raw`\kappa = \frac{P_o-P_e}{1-P_e}`,
    String.raw`P_o = \sum_{ij} w_{ij}p_{ij}`,
    String.raw`P_e = \sum_{ij} w_{ij}\,p_{i\cdot}\,p_{\cdot j}`,
    String.raw`w_{ij} = 1-\left(\frac{|i-j|}{K-1}\right)^{2}`,
  ],
  "trait-years": [
    String.raw`\bar x \pm t_{0.975;\,n-1}\,\frac{s}{\sqrt n}`,
    String.raw`D = \bar V-\bar K,\quad SE = \sqrt{\frac{s_V^2}{n_V}+\frac{s_K^2}{n_K}}`,
    String.raw`S = \sum_{i<j}\operatorname{sign}(D_j-D_i),\quad b = \operatorname{med}\frac{D_j-D_i}{t_j-t_i}`,
  ],
  "dry-to": [String.raw`g_\text{end} = g\,\frac{100-m}{100-m_\text{end}}`],
  "thousand-seed-weight": [
    String.raw`w_{1000} = 1000\,\frac{\sum_i g_i}{\sum_i n_i}`,
    String.raw`cv = 100\,\frac{s}{\bar w}`,
  ],
};
